package org.cagewall.kiosk.cage;

import java.awt.GridLayout;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.deed.BirdDeed;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.SideBySide;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.Stepper;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.nest.EggButton;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Overlays;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.nest.Crops;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.Feet;
import org.cagewall.room.nest.PartedFor;
import org.cagewall.room.nest.WhyRemoved;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Builds the sheets on which nests are told of. Used on the event thread. */
final class NestSheets implements NestForms {

    /** So many eggs stand side by side on a sheet. */
    private static final int MOST_ACROSS = 6;

    private static final int FEW_ACROSS = 4;
    private static final int MOST_EGGS = 20;
    private static final int MOST_CHICKS = 20;
    private static final int OLDEST_CHICK_DAYS = 60;
    private static final int LONGEST_AGO_DAYS = 60;

    private final Overlays overlays;
    private final Words words;

    NestSheets(Overlays overlays, Words words) {
        this.overlays = overlays;
        this.words = words;
    }

    @Override
    public void choose(Message title, List<CageState.LyingFace> faces, Consumer<CageState.LyingFace> then) {
        overlays.sheet(title, faces(faces, then), List.of(leave()));
    }

    /** A touch on one of them closes the sheet. */
    private JComponent faces(List<CageState.LyingFace> faces, Consumer<CageState.LyingFace> then) {
        if (faces.isEmpty()) {
            return sentence("cage.none-here");
        }
        SideBySide row = new SideBySide();
        for (CageState.LyingFace face : faces) {
            row.add(button("choose." + face.mark(), face, () -> {
                overlays.close();
                then.accept(face);
            }));
        }
        return row;
    }

    private static EggButton button(String name, CageState.LyingFace face, Runnable onPress) {
        return new EggButton(name, face.look(), face.mark(), face.line(), face.said(), onPress).second(face.second());
    }

    @Override
    public void candle(
            Message title,
            List<CageState.LyingFace> eggs,
            List<CageState.LyingFace> due,
            Consumer<Map<CageState.LyingFace, EggFinding>> then) {
        Map<CageState.LyingFace, EggFinding> found = new LinkedHashMap<>();
        int columns = Math.max(1, Math.min(Sizes.isRoomy() ? MOST_ACROSS : FEW_ACROSS, eggs.size()));
        Pane row = new Pane(new GridLayout(0, columns, Sizes.px(8), Sizes.px(16)));
        for (CageState.LyingFace egg : eggs) {
            row.add(new CandledEgg(words, egg, finding -> {
                        found.put(egg, finding);
                        if (found.keySet().containsAll(due)) {
                            overlays.close();
                            then.accept(found);
                        }
                    })
                    .part());
        }
        Stack both = new Stack(8);
        both.add(sentence("cage.candle-text"));
        both.add(row);
        overlays.sheet(title, both, List.of(keep(() -> then.accept(found)), leave()));
    }

    @Override
    public void takeOut(
            Message title, List<CageState.LyingFace> eggs, BiConsumer<CageState.LyingFace, Optional<WhyRemoved>> then) {
        Chips<WhyRemoved> why = Chips.oneOf("why", choices(WhyRemoved.values()), chosen -> {});
        Stack both = new Stack(16);
        both.add(sentence("cage.take-out-text"));
        both.add(why);
        both.add(faces(eggs, egg -> then.accept(egg, why.one())));
        overlays.sheet(title, both, List.of(leave()));
    }

    @Override
    public void ring(
            Message title,
            Optional<String> offered,
            List<CageState.LyingFace> chicks,
            BiConsumer<CageState.LyingFace, String> then) {
        Field ring = Field.line("ring", words.say("cage.ring-number"), offered.orElse(""));
        Stack all = new Stack(16);
        all.add(ring);
        all.add(sentence("cage.ring-text"));
        SideBySide row = new SideBySide();
        for (CageState.LyingFace chick : chicks) {
            row.add(button("choose." + chick.mark(), chick, () -> {
                if (ring.value().isBlank()) {
                    ring.wrong(words.say("cage.ring-missing"));
                    ring.focus();
                } else {
                    overlays.close();
                    then.accept(chick, ring.value().strip());
                }
            }));
        }
        all.add(row);
        overlays.sheet(title, all, List.of(leave()));
        if (offered.isEmpty()) {
            ring.focus();
        }
    }

    @Override
    public void look(Message title, int chicks, Consumer<Looked> then) {
        Stepper count = new Stepper(words, "chicks", words.say("cage.look.chicks"), 0, MOST_CHICKS, chicks, n -> {});
        Chips<Crops> crops = Chips.oneOf("crops", choices(Crops.values()), chosen -> {});
        Chips<Feet> feet = Chips.oneOf("feet", choices(Feet.values()), chosen -> {});
        Chips<String> more = Chips.someOf(
                "more",
                Stream.of("damp", "plucked", "cleaned")
                        .map(each -> new Choice<>(each, words.say("cage.look." + each), each))
                        .toList(),
                chosen -> {});
        crops.choose(List.of(Crops.FULL));
        feet.choose(List.of(Feet.CLEAN));
        Stack all = new Stack(8);
        all.add(count);
        labelled(all, "cage.look.crops", crops);
        labelled(all, "cage.look.feet", feet);
        labelled(all, "cage.look.more", more);
        overlays.sheet(
                title,
                all,
                List.of(
                        keep(() -> then.accept(new Looked(
                                count.value(),
                                crops.one().orElse(Crops.FULL),
                                feet.one().orElse(Feet.CLEAN),
                                more.chosen().contains("damp"),
                                more.chosen().contains("plucked"),
                                more.chosen().contains("cleaned")))),
                        leave()));
    }

    @Override
    public void found(Message title, LocalDate day, Consumer<Found> then) {
        new FoundForm(overlays, words, day).open(title, then);
    }

    /** So many eggs and chicks and about when, said again as a sentence with every touch. */
    private static final class FoundForm {

        private final Overlays overlays;
        private final Words words;
        private final LocalDate day;
        private final WrapLabel said = new WrapLabel("", TextStyle.LINE, Tone.INK);
        private final Stepper eggs;
        private final Stepper ago;
        private final Stepper chicks;
        private final Stepper age;

        FoundForm(Overlays overlays, Words words, LocalDate day) {
            this.overlays = overlays;
            this.words = words;
            this.day = day;
            eggs = stepper("eggs", MOST_EGGS);
            ago = stepper("ago", LONGEST_AGO_DAYS);
            chicks = stepper("chicks", MOST_CHICKS);
            age = stepper("age", OLDEST_CHICK_DAYS);
        }

        private Stepper stepper(String name, int most) {
            return new Stepper(words, name, words.say("cage.found." + name), 0, most, 0, number -> say());
        }

        void open(Message title, Consumer<Found> then) {
            SideBySide row = new SideBySide();
            Stream.of(eggs, ago, chicks, age).forEach(row::add);
            Stack all = new Stack(20);
            all.add(row);
            all.add(said);
            say();
            overlays.sheet(
                    title,
                    all,
                    List.of(
                            keep(() -> then.accept(new Found(eggs.value(), first(), chicks.value(), age.value()))),
                            leave()));
        }

        private Optional<LocalDate> first() {
            return ago.value() == 0 ? Optional.empty() : Optional.of(day.minusDays(ago.value()));
        }

        private void say() {
            String first = first().map(date -> words.say("cage.found.first", words.shortDay(date)))
                    .orElse("");
            String old = chicks.value() == 0 ? "" : words.say("cage.found.old", age.value());
            said.setText(words.say("cage.found.said", eggs.value(), first, chicks.value(), old));
        }
    }

    @Override
    public void treat(Message title, Optional<String> lastProduct, BirdDeed.TreatedFor reason, Consumer<Treated> then) {
        Field product = Field.line("product", words.say("birds.product"), lastProduct.orElse(""));
        Chips<BirdDeed.TreatedFor> why =
                Chips.oneOf("reason", Choice.of(BirdDeed.TreatedFor.values(), words, "birds.reason."), chosen -> {});
        why.choose(List.of(reason));
        Stack all = new Stack(12);
        all.add(product);
        labelled(all, "birds.reason", why);
        all.add(sentence("cage.treat-caution"));
        askForProduct(
                title,
                all,
                product,
                given -> then.accept(new Treated(given, why.one().orElse(reason))));
        if (lastProduct.isEmpty()) {
            product.focus();
        }
    }

    /** Comes back with what is missing until it is written, or the sheet is left. */
    private void askForProduct(Message title, JComponent all, Field product, Consumer<String> then) {
        overlays.sheet(
                title,
                all,
                List.of(
                        keep(() -> {
                            if (product.value().isBlank()) {
                                product.wrong(words.say("birds.write-product"));
                                askForProduct(title, all, product, then);
                                product.focus();
                            } else {
                                then.accept(product.value().strip());
                            }
                        }),
                        leave()));
    }

    @Override
    public void part(Message title, List<String> evidence, Consumer<PartedFor> then) {
        Stack all = new Stack(8);
        evidence.forEach(each -> all.add(new WrapLabel(each, TextStyle.SECOND, Tone.INK)));
        all.add(new WrapLabel(words.say("cage.part-why"), TextStyle.BUTTON, Tone.SOFT));
        Pane reasons = new Pane(new MigLayout("insets 0, fillx, wrap 2, gap 10 8", "[grow,fill,sizegroup why]"));
        for (PartedFor reason : PartedFor.values()) {
            reasons.add(
                    TouchButton.of(
                                    ButtonKind.PLAIN,
                                    "reason." + Message.word(reason),
                                    words.say("word.partedfor." + Message.word(reason)),
                                    () -> {
                                        overlays.close();
                                        then.accept(reason);
                                    })
                            .tall(56),
                    "wmin 0");
        }
        all.add(reasons);
        overlays.sheet(title, all, List.of(leave()));
    }

    @Override
    public void read(Message title, List<String> sentences) {
        Stack all = new Stack(8);
        sentences.forEach(each -> all.add(new WrapLabel(each, TextStyle.LINE, Tone.INK)));
        overlays.sheet(title, all, List.of(AnswerButton.main("ok", Message.of("shell.understood"), () -> {})));
    }

    // ------------------------------------------------------------------ parts

    private void labelled(Stack all, String key, JComponent part) {
        all.add(new WrapLabel(words.say(key), TextStyle.TAG, Tone.SOFT));
        all.add(part);
    }

    private WrapLabel sentence(String key) {
        return new WrapLabel(words.say(key), TextStyle.SECOND, Tone.SOFT);
    }

    private <E extends Enum<E>> List<Choice<E>> choices(E[] values) {
        List<Choice<E>> choices = new ArrayList<>();
        for (E value : values) {
            choices.add(new Choice<>(Message.word(value), words.say("cage.word", value), value));
        }
        return choices;
    }

    private static AnswerButton keep(Runnable then) {
        return AnswerButton.main("keep", Message.of("shell.keep"), then);
    }

    private static AnswerButton leave() {
        return AnswerButton.leave("leave", Message.of("shell.leave-it-so"));
    }
}
