package org.cagewall.kiosk.birds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.WithBirdroom;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Sex;
import org.junit.jupiter.api.Test;

/** Presses the page of birds and reads back what it recorded. */
class BirdsScreenTest extends WithBirdroom {

    @Test
    void birdsAreFoundByRingNameColourAndWhereTheyAre() {
        Painted page = page("Ines").png("birds").assertFit();
        assertThat(rows(page)).hasSize(8);

        write(page, "search", "grey").png("birds-grey").assertFit();
        assertThat(rows(page)).containsExactly("bird.HB 24-019", "bird.HB 25-117", "bird.HB 26-050");

        page.press("sexes.cocks");
        assertThat(rows(page)).containsExactly("bird.HB 24-019");

        write(page, "search", "pip");
        assertThat(rows(page)).containsExactly("bird.HB 24-019");

        write(page, "search", "").press("sexes.cocks").press("places.loose");
        assertThat(rows(page)).containsExactly("bird.HB 24-030");
    }

    @Test
    void aSearchInVainSaysSoAndABirdOfThePastIsFoundByItsWholeRing() {
        birdroom.tell("{\"deed\":\"bird-left\",\"bird\":\"HB 26-050\",\"how\":\"sold\",\"by\":\"Ines\"}");
        Painted page = page("Ines");

        write(page, "search", "HB 99").png("birds-none").assertFit();
        assertThat(rows(page)).isEmpty();
        write(page, "search", "hb 26-050")
                .press("bird.HB 26-050")
                .png("birds-gone")
                .assertFit();

        assertThat(page.maybe("do.move")).isEmpty();
        assertThat(page.find("all", JComponent.class)).isNotNull();
    }

    @Test
    void aBirdsPageTellsWhatIsKnownOfIt() {
        Painted page = page("Ines").press("bird.HB 26-041").png("birds-one").assertFit();

        assertThat(texts(page))
                .contains("A1", "2 March 2025 (13 months)", "pair 1, with HB 25-117, since 20 March 2026");
    }

    @Test
    void aBirdIsMovedByTouchingTheCage() {
        Painted page = page("Ines").press("bird.HB 26-050").press("do.move");
        page.press("record").png("birds-move-problem").assertFit();
        assertThat(page.find("problem", JLabel.class).getText()).startsWith("Touch the cage");

        page.press("to.B2").png("birds-move").assertFit().press("record").png("birds-moved");

        assertThat(newest()).contains("bird-moved").contains("\"to\":\"B2\"").contains("\"from\":\"Flight 1\"");
        assertThat(birdroom.room().cageName(bird("HB 26-050").cage().orElseThrow()))
                .isEqualTo("B2");
    }

    @Test
    void aBirdIsLookedOverWithItsWeight() {
        Painted page = page("Ines").press("bird.HB 26-051").press("do.looked-over");

        page.press("condition.watch").press("weight.4").press("weight.1").press("day.yesterday");
        write(page, "note", "keel a little sharp")
                .png("birds-looked-over")
                .assertFit()
                .press("record");

        assertThat(newest())
                .contains("\"on\":\"2026-04-13\"")
                .contains("\"condition\":\"watch\"")
                .contains("\"weight\":41")
                .contains("keel a little sharp");
    }

    @Test
    void aTreatmentNeedsItsProductAndItsReasonAndNeverADose() {
        Painted page = page("Ines").press("bird.HB 26-051").press("do.treated").press("record");
        page.png("birds-treated").assertFit();
        assertThat(page.find("product.wrong", JLabel.class).getText()).startsWith("Write what was given");

        write(page, "product", "Spot-on for mites").press("reason.entering").press("record");

        assertThat(newest()).contains("Spot-on for mites").contains("\"reason\":\"entering\"");
    }

    @Test
    void aLayingHenIsTreatedOnlyAfterAQuestion() {
        birdroom.tell("{\"deed\":\"egg-laid\",\"cage\":\"A1\",\"by\":\"Ines\"}");
        Painted page = page("Ines").press("bird.HB 25-117").press("do.treated");

        write(page, "product", "Spot-on for mites").press("reason.vet").press("record");
        assertThat(page.find("sheet.text", JLabel.class).getText()).contains("only if the label and your vet say so");
        page.press("answer.no");
        assertThat(newest()).contains("egg-laid");
        page.press("record").press("answer.sure");

        assertThat(newest()).contains("bird-treated").contains("\"sure\":true");
    }

    @Test
    void aBirdIsNamedSexedGivenParentsAndANote() {
        Painted page = page("Ines").press("bird.HB 26-050");

        page.press("do.sex").press("sex.hen").png("birds-sex").assertFit().press("record");
        assertThat(bird("HB 26-050").sex()).isEqualTo(Sex.HEN);

        write(page.press("do.name"), "name", "Pip").press("record");
        assertThat(page.find("sheet.text", JLabel.class).getText()).contains("already a bird Pip");
        page.press("answer.ok");
        write(page, "name", "Nell").press("record");
        assertThat(bird("HB 26-050").called()).contains("Nell");

        write(page.press("do.parents"), "father", "HB 24-019").press("record");
        assertThat(newest()).contains("parents-set").contains("HB 24-019");

        write(page.press("do.note"), "note", "Cracks seed by herself")
                .png("birds-note")
                .assertFit()
                .press("record");
        assertThat(newest()).contains("noted").contains("Cracks seed by herself");
    }

    @Test
    void aSecondSplitRingIsPutOnAndTakenOff() {
        Painted page = page("Ines").press("bird.HB 26-050").press("do.split-ring");
        page.press("record").png("birds-split-problem").assertFit();
        assertThat(page.find("split.wrong", JLabel.class).getText()).startsWith("Write its colour");

        write(page, "split", "yellow 7").press("day.yesterday").press("record");
        assertThat(newest())
                .contains("split-ring-put")
                .contains("\"on\":\"2026-04-13\"")
                .contains("\"bird\":\"HB 26-050\"")
                .contains("\"ring\":\"yellow 7\"");
        assertThat(bird("HB 26-050").splitRing()).contains("yellow 7");
        assertThat(texts(page)).contains("Second ring", "yellow 7");

        page.png("birds-split-known")
                .press("do.split-ring")
                .png("birds-split")
                .assertFit()
                .press("split-off");
        assertThat(newest()).contains("split-ring-put").doesNotContain("\"ring\":");
        assertThat(bird("HB 26-050").splitRing()).isEmpty();
    }

    @Test
    void aBirdGoesOutAndComesBackAndLeavesForGood() {
        Painted page = page("Ines").press("bird.HB 26-051");

        page.press("do.out").press("where.vet").assertFit().press("record");
        assertThat(bird("HB 26-051").out()).isPresent();
        write(page.press("do.back"), "result", "All clear")
                .png("birds-back")
                .assertFit()
                .press("record");
        assertThat(newest()).contains("bird-back").contains("All clear");

        page.press("do.left").press("how.sold");
        write(page, "place", "a friend of the club")
                .png("birds-left")
                .assertFit()
                .press("record");

        assertThat(newest()).contains("bird-left").contains("\"how\":\"sold\"").contains("a friend of the club");
        assertThat(birdroom.room().bird("HB 26-051").filter(Bird::isPresent)).isEmpty();
        assertThat(rows(page)).doesNotContain("bird.HB 26-051");
    }

    @Test
    void aBirdOutAtAShowCarriesTheShowsNameInTheListAndOnItsPage() {
        Painted page = page("Ines").press("bird.HB 26-051").press("do.out").press("where.show");

        write(page, "place", "Valley Show").png("birds-out").assertFit().press("record");

        assertThat(newest()).contains("bird-out").contains("\"place\":\"Valley Show\"");
        assertThat(bird("HB 26-051").out().orElseThrow().place()).contains("Valley Show");
        assertThat(texts(page.png("birds-at-a-show").assertFit()))
                .anyMatch(text -> text.startsWith("at a show: Valley Show since "));
        assertThat(page("Ines").all())
                .anyMatch(part -> part.getAccessibleContext() != null
                        && String.valueOf(part.getAccessibleContext().getAccessibleName())
                                .contains("at a show: Valley Show"));
    }

    @Test
    void aNewBirdIsAddedWithItsCage() {
        Painted page = page("Ines")
                .press("new-bird")
                .press("record")
                .png("birds-new-problem")
                .assertFit();
        assertThat(page.find("ring.wrong", JLabel.class).getText()).startsWith("Write the ring");

        write(page, "ring", "HB 26-099")
                .press("sex.hen")
                .press("colour.quick.grey")
                .press("hatched.quick.2026")
                .press("in.B4")
                .png("birds-new")
                .assertFit()
                .press("record")
                .png("birds-added");

        assertThat(newest())
                .contains("bird-added")
                .contains("\"hatched\":\"2026\"")
                .contains("\"colour\":\"grey\"")
                .contains("\"cage\":\"B4\"");
        assertThat(page.find("do.move", JComponent.class)).isNotNull();
    }

    @Test
    void aBoughtBirdsRingYearIsEnteredAndShownOnItsPage() {
        Painted page = page("Ines").press("new-bird");
        write(page, "ring", "QZ 77").press("sex.hen").press("in.B4");
        write(page, "ring-year", "23").press("record");
        assertThat(page.find("ring-year.wrong", JLabel.class).getText()).startsWith("Write the year");

        write(page, "ring-year", "2023").press("record");

        assertThat(newest()).contains("\"ring-year\":2023");
        assertThat(texts(page)).contains("Year of the ring", "2023");
    }

    @Test
    void aHatchingDateThatIsNoneIsSaidByItsField() {
        Painted page = page("Ines").press("new-bird");
        write(page, "ring", "HB 26-099").press("sex.hen").press("in.B4");

        write(page, "hatched", "last spring").press("record");

        assertThat(page.find("hatched.wrong", JLabel.class).getText()).startsWith("Write a year");
    }

    @Test
    void aSitterMayNoteAndSayThatABirdIsLooseOrFoundAndNothingElse() {
        Painted page = page("Tomas").assertFit();
        assertThat(page.maybe("new-bird")).isEmpty();

        page.press("bird.HB 24-030").png("birds-sitter").assertFit();
        assertThat(page.names()).filteredOn(name -> name.startsWith("do.")).containsExactly("do.note", "do.found");
        page.press("do.found");

        assertThat(newest()).contains("bird-found").contains("\"by\":\"Tomas\"");
        assertThat(bird("HB 24-030").loose()).isFalse();
    }

    @Test
    void thePagesAreFitAtLargeLettersToo() {
        Painted page = birdroom.painted(TextSize.LARGE, "Ines", new Destination.Birds(), this::screen)
                .png("birds-large")
                .assertFit();

        page.press("bird.HB 24-008").png("birds-one-large").assertFit();
        page.press("do.move").png("birds-move-large").assertFit();
        page.press("leave")
                .press("all")
                .press("new-bird")
                .png("birds-new-large")
                .assertFit();
    }

    private Bird bird(String ring) {
        return birdroom.room().bird(ring).orElseThrow();
    }

    private String newest() {
        return birdroom.newest(1).get(0);
    }

    private static Painted write(Painted page, String field, String text) {
        JTextComponent place = page.find(field, JTextComponent.class);
        return page.after(() -> place.setText(text));
    }

    private static List<String> rows(Painted page) {
        return page.names().stream().filter(name -> name.startsWith("bird.")).toList();
    }

    private static List<String> texts(Painted page) {
        return page.all().stream()
                .filter(JLabel.class::isInstance)
                .map(part -> ((JLabel) part).getText())
                .toList();
    }

    private Painted page(String person) {
        return birdroom.painted(person, new Destination.Birds(), this::screen);
    }

    private BirdsScreen screen(Pen pen, Layers stage) {
        return new BirdsScreen(birdroom.desk(), pen, stage, stage, Birdroom.WORDS);
    }
}
