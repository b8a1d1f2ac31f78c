package org.cagewall.paper;

/**
 * Where the cards lie on a sheet of paper. All lengths in millimetres. Immutable; any thread.
 *
 * @param name the name by which the sheet is chosen, its file's name without the ending
 * @param title what a keeper reads in a list
 * @param paper the sheet
 * @param columns cards beside each other
 * @param rows cards below each other
 * @param card one card
 * @param left from the paper's left edge to the first card, the shift included
 * @param top from the paper's upper edge to the first card, the shift included
 * @param pitch from one card to the next, across and down
 * @param shift by how much all cards were moved right and down for a printer that is a little off
 */
public record Sheet(
        String name,
        String title,
        Size paper,
        int columns,
        int rows,
        Size card,
        double left,
        double top,
        Size pitch,
        Size shift) {

    public int cards() {
        return columns * rows;
    }

    /** The place of a card on its page; counted from 0, row by row. */
    public Area place(int index) {
        if (index < 0 || index >= cards()) {
            throw new IllegalArgumentException("a sheet of " + cards() + " has no place " + index);
        }
        return new Area(
                left + index % columns * pitch.width(),
                top + index / columns * pitch.height(),
                card.width(),
                card.height());
    }
}
