package org.cagewall.kiosk.cards;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.cagewall.cards.FaceChoice;
import org.cagewall.cards.Order;
import org.cagewall.paper.FreePlaces;
import org.cagewall.paper.Raster;
import org.cagewall.paper.Sheet;

/**
 * What the page shows on which cards are laid out and printed. Immutable; any thread, and free of Swing.
 *
 * @param cages whose cards are printed, in walking order
 * @param sheets the sheets of paper there are to choose from
 * @param sheet the name of the one chosen
 * @param faces which face the cards get
 * @param copies how many of each
 * @param used the places of the first sheet that are used already, counted from 0
 * @param printers the printers of this machine, or that they are being looked for
 * @param printer the one chosen
 * @param doubt why the printer may not take this paper
 * @param preview the sheet that is looked at
 * @param work what is under way
 * @param problem why nothing came of the last try
 * @param news what came of it
 */
public record PrintState(
        List<String> cages,
        List<SheetChoice> sheets,
        String sheet,
        FaceChoice faces,
        int copies,
        Set<Integer> used,
        PrintersFound printers,
        String printer,
        Optional<String> doubt,
        Preview preview,
        Work work,
        Optional<String> problem,
        Optional<String> news) {

    static final int MOST_COPIES = 20;

    /** A sheet of paper by its name: how it lies, or why it cannot be used. */
    public record SheetChoice(String name, String title, Optional<Sheet> usable, Optional<String> refused) {}

    /** The printers of this machine; empty while they are looked for. */
    public record PrintersFound(Optional<List<String>> names) {

        boolean areAny() {
            return names.filter(all -> !all.isEmpty()).isPresent();
        }
    }

    /** Which sheet is looked at, counted from 0, and how it will be printed once it is drawn. */
    public record Preview(int sheet, Optional<Raster> drawn) {

        static final Preview FIRST = new Preview(0, Optional.empty());
    }

    /** What is under way: nothing, pages being made, or a print and at which page it is. */
    public record Work(Kind kind, int page) {

        static final Work NONE = new Work(Kind.NONE, 0);

        /** What kind of work. */
        public enum Kind {
            NONE,
            SAVING,
            PRINTING,
            STOPPING
        }
    }

    public PrintState {
        cages = List.copyOf(cages);
        sheets = List.copyOf(sheets);
        used = Set.copyOf(used);
    }

    static PrintState of(String sheet, FaceChoice faces, String printer) {
        return new PrintState(
                List.of(),
                List.of(),
                sheet,
                faces,
                1,
                Set.of(),
                new PrintersFound(Optional.empty()),
                printer,
                Optional.empty(),
                Preview.FIRST,
                Work.NONE,
                Optional.empty(),
                Optional.empty());
    }

    Optional<SheetChoice> theChoice() {
        return sheets.stream().filter(each -> each.name().equals(sheet)).findFirst();
    }

    Optional<Sheet> theSheet() {
        return theChoice().flatMap(SheetChoice::usable);
    }

    /** How the cards are to be laid; nothing where the sheet cannot be used, or no place of it is free. */
    Optional<Order> order() {
        return theSheet().flatMap(usable -> {
            Set<Integer> free =
                    new TreeSet<>(IntStream.range(0, usable.cards()).boxed().toList());
            free.removeAll(used);
            return free.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Order(FreePlaces.of(usable, free), faces, copies));
        });
    }

    int pages() {
        return order().map(order -> order.sheetsFor(cages.size())).orElse(0);
    }

    /** The sheet that is looked at, counted from 0: there may be fewer than when it was turned to. */
    int at() {
        return Math.max(0, Math.min(preview.sheet(), pages() - 1));
    }

    /** The places of the sheet that is looked at on which cards will lie. */
    Set<Integer> taken() {
        return pages() == 0
                ? Set.of()
                : order().orElseThrow().spread(cages).get(at()).keySet();
    }

    /** The places of the sheet that is looked at which were used before: only the first one may be part-used. */
    Set<Integer> usedHere() {
        return at() == 0 ? used : Set.of();
    }

    boolean isIdle() {
        return work.kind() == Work.Kind.NONE;
    }

    boolean isReady() {
        return isIdle() && pages() > 0;
    }

    PrintState ofCages(List<String> chosen) {
        return new PrintState(
                chosen, sheets, sheet, faces, copies, used, printers, printer, doubt, preview, work, problem, news);
    }

    PrintState onSheet(String name) {
        return new PrintState(
                cages, sheets, name, faces, copies, Set.of(), printers, printer, doubt, preview, work, problem, news);
    }

    PrintState with(FaceChoice choice) {
        return new PrintState(
                cages, sheets, sheet, choice, copies, used, printers, printer, doubt, preview, work, problem, news);
    }

    PrintState copied(int times) {
        return new PrintState(
                cages, sheets, sheet, faces, times, used, printers, printer, doubt, preview, work, problem, news);
    }

    PrintState using(Set<Integer> places) {
        return new PrintState(
                cages, sheets, sheet, faces, copies, places, printers, printer, doubt, preview, work, problem, news);
    }

    PrintState toPrinter(String name) {
        return new PrintState(
                cages, sheets, sheet, faces, copies, used, printers, name, doubt, preview, work, problem, news);
    }

    PrintState doubting(Optional<String> why) {
        return new PrintState(
                cages, sheets, sheet, faces, copies, used, printers, printer, why, preview, work, problem, news);
    }

    PrintState previewing(Preview other) {
        return new PrintState(
                cages, sheets, sheet, faces, copies, used, printers, printer, doubt, other, work, problem, news);
    }

    /** What is shown of the sheet before stays until this one is drawn. */
    PrintState turned(int by) {
        return previewing(new Preview(at() + by, preview.drawn()));
    }

    /** Begins work, or ends it; what was said before is over. */
    PrintState working(Work now) {
        return after(now, Optional.empty(), Optional.empty());
    }

    PrintState failed(String why) {
        return after(Work.NONE, Optional.of(why), Optional.empty());
    }

    PrintState telling(String what) {
        return after(Work.NONE, Optional.empty(), Optional.of(what));
    }

    private PrintState after(Work now, Optional<String> wrong, Optional<String> done) {
        return new PrintState(
                cages, sheets, sheet, faces, copies, used, printers, printer, doubt, preview, now, wrong, done);
    }

    /** What was found; a sheet or printer that is there no more gives way to the first. */
    PrintState with(List<SheetChoice> allSheets, List<String> allPrinters) {
        String paper = allSheets.stream()
                .map(SheetChoice::name)
                .filter(sheet::equals)
                .findFirst()
                .orElse(allSheets.get(0).name());
        String printing = allPrinters.contains(printer)
                ? printer
                : allPrinters.stream().findFirst().orElse("");
        return new PrintState(
                cages,
                allSheets,
                paper,
                faces,
                copies,
                used,
                new PrintersFound(Optional.of(List.copyOf(allPrinters))),
                printing,
                doubt,
                preview,
                work,
                problem,
                news);
    }
}
