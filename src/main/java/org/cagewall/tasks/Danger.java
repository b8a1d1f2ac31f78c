package org.cagewall.tasks;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.CallMatter;
import org.cagewall.room.Person;
import org.cagewall.room.Room;
import org.cagewall.room.care.Sign;
import org.cagewall.text.Message;

/**
 * What can go wrong among the birds or in the birdroom, each with its one rule, its steps and how soon to phone. Every
 * list, panel, page and paper takes its words from here. Immutable; any thread.
 */
public enum Danger {
    SMOKE(Group.HOUSE, Urgency.PHONE_NOW, "get-out", "smell", "stay-out", "call-outside", "phone-outside"),
    BREATH(Group.BIRD, Urgency.PHONE_NOW, "fumes", "phone", "say-what", "in-peace", "own-heat", "as-told"),
    BLEEDING(Group.BIRD, Urgency.PHONE_NOW, "phone", "say-what", "in-peace", "say-blood", "put-nothing", "as-told"),
    STRAINING(Group.BIRD, Urgency.PHONE_NOW, "phone", "say-what", "in-peace", "stuck-egg", "own-heat", "as-told"),
    ILL(Group.BIRD, Urgency.PHONE_NOW, "fumes", "phone", "say-what", "in-peace", "stuck-egg", "own-heat", "as-told"),
    CHICK_OUT(
            Group.BIRD, Urgency.PHONE_NOW, "phone", "say-chick", "leave-chick", "box-closed", "may-be-out", "own-heat"),
    UNFED(Group.FOOD, Urgency.PHONE_NOW, "fill-both", "alone", "phone", "say-what", "no-new-food"),
    WRONG_FOOD(Group.FOOD, Urgency.PHONE_NOW, "food-out", "phone", "say-food", "keep-pack", "right-food", "food-again"),
    DEAD(Group.GONE, Urgency.PHONE_NOW, "several", "phone", "gloves", "guard", "two-bags", "cool", "wash", "others"),
    LOOSE(Group.GONE, Urgency.PHONE_NOW, "shut", "fans", "no-chase", "show-seed", "phone"),
    STUCK(Group.GONE, Urgency.PHONE_NOW, "phone", "no-pull", "quiet", "say-what", "as-told"),
    MISSING(Group.GONE, Urgency.PHONE_NOW, "count-again", "look-round", "box-shut", "shut", "phone"),
    HEAT(
            Group.AIR,
            Urgency.PHONE_NOW,
            "pants",
            "heat-phone",
            "heater-on",
            "shade",
            "air",
            "fresh-water",
            "soft-out",
            "no-ice"),
    COLD(Group.AIR, Urgency.PHONE_NOW, "phone", "draught", "frozen", "own-heat"),
    HEATER(Group.AIR, Urgency.PHONE_NOW, "no-repair", "phone", "own-heat", "degrees"),
    FROZEN_WATER(Group.AIR, Urgency.PHONE_NOW, "new-water", "water-again", "own-heat", "phone"),
    POWER(Group.AIR, Urgency.PHONE_NOW, "torch", "calm", "degrees", "own-heat", "phone"),
    WATER(Group.HOUSE, Urgency.PHONE_NOW, "plugs", "tap", "stay-dry", "phone"),
    VERMIN(Group.HOUSE, Urgency.PHONE_NOW, "cat-out", "no-rat", "bitten", "phone"),
    STRANGER(Group.HOUSE, Urgency.PHONE_NOW, "door-shut", "say-owner", "say-nothing", "afraid", "no-entry", "phone"),
    FIGHT(Group.WATCH, Urgency.PHONE_IF_UNSURE, "no-hand", "blood", "again"),
    EGG_ON_FLOOR(Group.WATCH, Urgency.PHONE_IF_UNSURE, "leave-egg", "look-hen", "write-down"),
    EMPTY_DISH(Group.WATCH, Urgency.PHONE_IF_UNSURE, "fill", "alone", "eat", "not-eating", "since-when", "report"),
    MISSED(Group.WATCH, Urgency.PHONE_IF_UNSURE, "every-cage", "alone", "each-bird", "missed-phone", "missed-book");

    /** That nobody brings heat of their own, whose fumes kill birds, nor changes the owner's. */
    public static final Message OWN_HEAT = Message.of("danger.do-own-heat");

    /** Whom to call first where somebody is in danger, in the same words everywhere; within a sentence. */
    public static final Message EMERGENCY = Message.of("danger.emergency");

    /** When that number comes before all others. */
    public static final Message EMERGENCY_FIRST = Message.of("danger.emergency-first", EMERGENCY);

    /** What to do when somebody does not answer the phone, or nobody does, whatever it is about. */
    public static final Message NO_ANSWER = Message.of("danger.next");

    /** What stands together on one card of a panel. */
    public enum Group {
        BIRD,
        FOOD,
        GONE,
        AIR,
        HOUSE,
        /** What is seen to and written down: it is on no panel. */
        WATCH;

        /** When to stop and phone, in one or two sentences that name each danger of the group. */
        Message rule(Room room) {
            return new Message(
                    "danger.group-" + Message.word(this),
                    dangers().<Object>map(danger -> danger.brief(room)).toList());
        }

        public Stream<Danger> dangers() {
            return Arrays.stream(Danger.values()).filter(danger -> danger.group == this);
        }
    }

    private final Group group;
    private final Urgency urgency;
    private final List<String> steps;

    Danger(Group group, Urgency urgency, String... steps) {
        this.group = group;
        this.urgency = urgency;
        this.steps = List.of(steps);
    }

    /** The danger of which a sign speaks; none where a sign is good, or somebody's own words. */
    public static Optional<Danger> of(Sign sign) {
        return switch (sign) {
            case ON_FLOOR, PUFFED_UP, NOT_EATING, NOT_UPRIGHT, SICK -> Optional.of(ILL);
            case GASPING, TAIL_BOBS, HARD_BREATH -> Optional.of(BREATH);
            case BLEEDING, HURT -> Optional.of(BLEEDING);
            case STRAINING -> Optional.of(STRAINING);
            case DEAD -> Optional.of(DEAD);
            case MISSING, MORE_BIRDS -> Optional.of(MISSING);
            case LOOSE -> Optional.of(LOOSE);
            case STUCK -> Optional.of(STUCK);
            case FIGHTING -> Optional.of(FIGHT);
            case EGG_ON_FLOOR -> Optional.of(EGG_ON_FLOOR);
            case CHICK_OUT -> Optional.of(CHICK_OUT);
            case DISH_EMPTY -> Optional.of(EMPTY_DISH);
            case FOOD_LOW -> Optional.of(UNFED);
            case WRONG_FOOD -> Optional.of(WRONG_FOOD);
            case OTHER, EATING, UPRIGHT, NOT_HURT -> Optional.empty();
        };
    }

    /** What says the same of a cage as this danger's title, no more and no less; none where it is about the room. */
    public Optional<Sign> sign() {
        return switch (this) {
            case BREATH -> Optional.of(Sign.HARD_BREATH);
            case BLEEDING -> Optional.of(Sign.HURT);
            case STRAINING -> Optional.of(Sign.STRAINING);
            case ILL -> Optional.of(Sign.SICK);
            case CHICK_OUT -> Optional.of(Sign.CHICK_OUT);
            case UNFED -> Optional.of(Sign.FOOD_LOW);
            case WRONG_FOOD -> Optional.of(Sign.WRONG_FOOD);
            case DEAD -> Optional.of(Sign.DEAD);
            case LOOSE -> Optional.of(Sign.LOOSE);
            case STUCK -> Optional.of(Sign.STUCK);
            case MISSING -> Optional.of(Sign.MISSING);
            case FIGHT -> Optional.of(Sign.FIGHTING);
            case EGG_ON_FLOOR -> Optional.of(Sign.EGG_ON_FLOOR);
            case EMPTY_DISH -> Optional.of(Sign.DISH_EMPTY);
            case SMOKE, HEAT, COLD, HEATER, FROZEN_WATER, POWER, WATER, VERMIN, STRANGER, MISSED -> Optional.empty();
        };
    }

    /** What a call about it is about. */
    public CallMatter matter() {
        return switch (this) {
            case ILL, BREATH, BLEEDING, STRAINING -> CallMatter.ILL;
            case UNFED, EMPTY_DISH, WRONG_FOOD -> CallMatter.FOOD;
            case HEATER, FROZEN_WATER -> CallMatter.COLD;
            case FIGHT, EGG_ON_FLOOR, MISSED -> CallMatter.OTHER;
            case DEAD, LOOSE, STUCK, MISSING, CHICK_OUT, HEAT, COLD, POWER, SMOKE, WATER, VERMIN, STRANGER ->
                CallMatter.valueOf(name());
        };
    }

    /** As what it is kept when somebody says so and knows no cage. */
    public CallMatter alarm() {
        return CallMatter.valueOf(name());
    }

    /** Whether the room is left before anything is read, touched or phoned. */
    public boolean isLeftFirst() {
        return this == SMOKE;
    }

    /** Its name among the parts of a screen and in the record: {@code frozen-water}. */
    public String word() {
        return Message.word(this);
    }

    public Urgency urgency() {
        return urgency;
    }

    /** Whether a bird's health is at stake, so that whom the owner named for an ill bird is phoned first. */
    public boolean isIllness() {
        return switch (this) {
            case ILL, BREATH, BLEEDING, STRAINING, STUCK, CHICK_OUT, WRONG_FOOD -> true;
            default -> false;
        };
    }

    /** Whether the bird is left in its cage in peace, so that the cage is neither cleaned nor moved about in. */
    public boolean isLeftInPeace() {
        return this == ILL || this == BREATH || this == BLEEDING || this == STRAINING;
    }

    /** What to do when nobody answers the phone: any vet can help a bird, but not with a broken pipe. */
    public Message noAnswer() {
        return isIllness() ? NO_ANSWER : Message.of("danger.next-else");
    }

    /** "A bird is loose". */
    public Message title() {
        return Message.of("danger." + word());
    }

    /** When it is one, and the one thing to do. */
    public Message rule(Room room) {
        return say(word() + "-rule", room);
    }

    /** What to do before somebody answers, and until then, one sentence or two each. */
    public List<Message> steps(Room room) {
        return steps.stream().map(step -> say("do-" + step, room)).toList();
    }

    private Message brief(Room room) {
        return say(word() + "-brief", room);
    }

    private static Message say(String key, Room room) {
        return Message.of(
                "danger." + key,
                room.owner().map(Person::name).orElse("-"),
                room.settings().heatAct(),
                room.settings().heatPhone(),
                room.settings().coldPhone(),
                EMERGENCY);
    }
}
