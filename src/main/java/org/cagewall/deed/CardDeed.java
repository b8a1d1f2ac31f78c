package org.cagewall.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Reason;
import org.cagewall.room.RingCustom;
import org.cagewall.room.Role;
import org.cagewall.room.bird.RingLoss;
import org.cagewall.room.bird.RingStock;
import org.cagewall.room.card.CardFace;
import org.cagewall.room.card.PrintedCard;
import org.cagewall.text.Message;

/** Deeds about cards, rings and mistakes. */
public sealed interface CardDeed extends Deed {

    /** A card printed with the face the cage has at that moment. */
    record CardPrinted(
            String cage, @Bounds(least = 1, most = 99_999) Optional<Integer> revision)
            implements CardDeed, AtCage, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage));
        }

        @Override
        public Deed resolved(Scene scene) {
            return revision.isPresent() ? this : new CardPrinted(cage, Optional.of(next(scene, cage)));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return card(scene, cage, revision.orElseThrow(), Optional.empty());
        }

        @Override
        public Message words() {
            return Message.of("deed.did.card-printed");
        }
    }

    /** The keeper wrote the change on the card that hangs there. */
    record CardPencilled(String cage) implements CardDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), this::hasACard);
        }

        private Ruling hasACard(Scene scene) {
            return Ruling.refusesIf(scene.room().cage(cage).flatMap(Cage::card).isEmpty(), "deed.no-card", cage);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            PrintedCard hanging = scene.theCage(cage).card().orElseThrow();
            return card(scene, cage, hanging.revision(), Optional.of(hanging.digest()));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.card-pencilled");
        }
    }

    record RingsBought(
            @Bounds(least = 1950, most = 2200) int year,
            String size,
            @Bounds(least = 0, most = 99_999) int first,
            @Bounds(least = 0, most = 99_999) int last,
            Optional<String> form,
            Optional<String> colour)
            implements CardDeed, SettingUp {

        /** More rings than this nobody buys at once, and each is looked through. */
        private static final int MOST = 2_000;

        @Override
        public List<Rule> judgedBy() {
            return List.of(
                    scene -> Ruling.refusesIf(last < first, "deed.rings-order", first, last),
                    scene -> Ruling.refusesIf(last - first >= MOST, "nest.many-rings", MOST),
                    scene -> Ruling.refusesIf(
                            form.filter(it -> !RingStock.isForm(it)).isPresent(), "nest.ring-form", form.orElse("-")),
                    this::overlapsNone);
        }

        private Ruling overlapsNone(Scene scene) {
            return scene.room().rings().stream()
                    .filter(stock -> stock.year() == year && stock.size().equals(size))
                    .filter(stock -> stock.first() <= last && first <= stock.last())
                    .findFirst()
                    .map((RingStock stock) -> Ruling.refuses("deed.rings-twice", stock.first(), stock.last(), year))
                    .orElse(Ruling.ALLOWED);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            List<Fact> facts = new ArrayList<>();
            facts.add(new Fact.RingStock(year, size, first, last, form));
            colour.ifPresent(it -> facts.add(new Fact.Setting(RingCustom.COLOUR + year, it)));
            return facts;
        }

        @Override
        public Message words() {
            return Message.of("deed.did.rings-bought", Integer.toString(year), first, last);
        }
    }

    record RingSpoilt(String ring, Optional<RingLoss> why) implements CardDeed {

        @Override
        public List<Rule> judgedBy() {
            return List.of(
                    BirdRules.nameIsFree(ring),
                    scene -> Ruling.refusesIf(
                            scene.room().ringsSpoilt().stream().anyMatch(each -> Names.same(each, ring)),
                            "deed.spoilt-already",
                            ring));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.RingSpoilt(ring, why));
        }

        @Override
        public Message words() {
            return why.map(it -> Message.of("nest.did.ring-spoilt-for", ring, it))
                    .orElse(Message.of("deed.did.ring-spoilt", ring));
        }
    }

    /** A mistake struck out: the entry stays, with a line through it, and what it told holds no more. */
    record StruckOut(
            @Bounds(least = 1, most = Integer.MAX_VALUE) int entry,
            @Prose String why) implements CardDeed, NamesEntry {

        @Override
        public List<Rule> judgedBy() {
            return List.of(this::mayBeStruck);
        }

        private Ruling mayBeStruck(Scene scene) {
            Optional<Register.Recorded> found = scene.register().entry(entry);
            if (found.isEmpty()) {
                return Ruling.refuses("deed.entry-unknown", entry, scene.room().head());
            }
            Register.Recorded struck = found.get();
            if (struck.struckBy().isPresent()) {
                return Ruling.refuses(
                        "deed.struck-already", entry, struck.struckBy().get());
            }
            if (struck.deed().equals("struck-out")) {
                return Ruling.refuses("deed.strike-of-strike", entry);
            }
            boolean sitter =
                    scene.person().filter(it -> it.role() == Role.SITTER).isPresent();
            boolean own =
                    scene.told().by().filter(it -> Names.same(it, struck.by())).isPresent();
            if (sitter && !own) {
                return Ruling.refuses("deed.sitter-strikes", struck.by());
            }
            return struck.leaning()
                    .map(leaning -> Ruling.refuses("deed.leaned-on", entry, leaning))
                    .orElse(Ruling.ALLOWED);
        }

        @Override
        public Deed naming(int other) {
            return new StruckOut(other, why);
        }

        /** A strike brings no facts: it takes those of the struck entry away. */
        @Override
        public List<Fact> facts(Scene scene) {
            return List.of();
        }

        @Override
        public Message words() {
            return Message.of("deed.did.struck-out", entry, Reason.told(why));
        }
    }

    private static int next(Scene scene, String cage) {
        return scene.register().highestRevision(scene.theCage(cage).id()) + 1;
    }

    private static List<Fact> card(Scene scene, String name, int revision, Optional<String> digest) {
        Cage cage = scene.theCage(name);
        CardFace face = CardFaces.of(scene.room(), cage);
        return List.of(new Fact.Card(cage.id(), revision, face.canonical(), digest.orElseGet(face::digest)));
    }
}
