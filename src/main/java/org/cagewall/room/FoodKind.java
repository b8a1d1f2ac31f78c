package org.cagewall.room;

/** What the sitter does with a line of food. */
public enum FoodKind {
    /** It fills the seed dish. */
    DISH,
    /** It goes bad, so what is left of it is taken out on the next round. */
    PERISHABLE,
    /** It is given, and may stay. */
    OTHER;

    /** What a food most likely is, by the words for it; a wrong guess that takes it out in the evening does no harm. */
    public static FoodKind guess(String what) {
        return FoodWords.guess(what);
    }
}
