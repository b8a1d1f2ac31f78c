package org.cagewall.room;

import java.util.Locale;
import java.util.regex.Pattern;

/** What the words of a line of food tell about it. The lists are common practice, no source. Pure; any thread. */
public final class FoodWords {

    private static final Pattern WATER = Pattern.compile("\\bwater$");

    private static final Pattern MOIST = Pattern.compile(
            "\\b(soft ?\\w*|egg\\w*|soaked|sprout\\w*|germinat\\w*|wet|moist|mash|cooked|boiled|steamed|frozen"
                    + "|bread|rice|couscous|milk|yogh?urt|quark|cheese|mealworms?|worms?|insects?)\\b");

    /** Green stuff and fruit, unless it is their seed. */
    private static final Pattern FRESH = Pattern.compile(
            "\\b(fresh|green(s|food|ery)?|leaf|leaves|lettuce|spinach|kale|cabbage|chard|cress|chickweed|dandelions?"
                    + "|grass(es)?|herbs?|basil|parsley|cucumbers?|carrots?|broccoli|peas?|corn|beetroot|peppers?"
                    + "|vegetables?|veg|veggies|fruits?|apples?|pears?|oranges?|berry|\\w*berries|\\w+berry|melons?"
                    + "|mango|grapes?)\\b(?! ?seeds?\\b| ?millet\\b)");

    private static final Pattern STAYS = Pattern.compile("\\b(sprays?|bells?|sticks?|blocks?|treats?)\\b");

    private static final Pattern DISH =
            Pattern.compile("\\b(\\w*seeds?|seed ?mix\\w*|mix|mixes|mixture|mixed|millet|pellets?)\\b");

    /** Units in which a medicine is measured, and no food of a birdroom. */
    private static final Pattern UNIT =
            Pattern.compile("(?<![\\p{L}])(ml|millilit(re|er)s?|cl|cc|\u00b5l|\u03bcl|ul|microlit(re|er)s?"
                    + "|mg|milligram(me)?s?|\u00b5g|\u03bcg|mcg|ug|microgram(me)?s?|iu|units?|drops?|droplets?|drips?"
                    + "|syringes?|doses?|dosage|tablets?|pills?|capsules?|pipettes?)(?![\\p{L}])");

    /** Words for medicines, and the endings by which their substances are known (International Nonproprietary Names). */
    private static final Pattern MEDICINE =
            Pattern.compile("\\b(medic\\w*|meds|remed(y|ies)|drugs?|antibiotics?|treatment"
                    + "|wormers?|deworm\\w*|worming|dewormer|antifungal\\w*|antiparasit\\w*|painkillers?|drench|injections?"
                    + "|\\w+cyclines?|\\w+floxacin|\\w*cillin|\\w+nidazole|\\w+conazole|\\w+bendazole|\\w+mectin|\\w+oxicam"
                    + "|\\w+mycin|sulfa\\w*|sulpha\\w*|levamisole|praziquantel|amprolium|toltrazuril|nystatin|amphotericin"
                    + "|fipronil|permethrin|cortisone|prednisolone)\\b");

    private FoodWords() {}

    static FoodKind guess(String what) {
        String named = what.strip().toLowerCase(Locale.ROOT);
        if (STAYS.matcher(named).find() || WATER.matcher(named).find()) {
            return FoodKind.OTHER;
        }
        if (MOIST.matcher(named).find() || FRESH.matcher(named).find()) {
            return FoodKind.PERISHABLE;
        }
        return DISH.matcher(named).find() ? FoodKind.DISH : FoodKind.OTHER;
    }

    public static boolean isMedicine(String what, String amount) {
        String written = (what + " " + amount).toLowerCase(Locale.ROOT);
        return UNIT.matcher(written).find() || MEDICINE.matcher(written).find();
    }
}
