package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.kiosk.kit.wall.WallPlan;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.Permission;

/**
 * What the part of food shows. Immutable; any thread, and free of Swing.
 *
 * @param walls the walls with their cages, each with how much is known of its food
 * @param cages the cages that the lines are for, in the order in which they were touched
 * @param lines what they are given
 * @param allowed what the sitter may do there
 */
record FoodState(
        List<WallPlan> walls,
        List<String> cages,
        List<FeedLine> lines,
        Set<Permission> allowed,
        Optional<Problem> problem) {

    FoodState {
        walls = List.copyOf(walls);
        cages = List.copyOf(cages);
        lines = List.copyOf(lines);
        allowed = Set.copyOf(allowed);
    }

    FoodState forCages(List<String> others) {
        return new FoodState(walls, others, lines, allowed, Optional.empty());
    }

    FoodState giving(List<FeedLine> others) {
        return new FoodState(walls, cages, others, allowed, Optional.empty());
    }

    FoodState allowing(Set<Permission> others) {
        return new FoodState(walls, cages, lines, others, Optional.empty());
    }

    FoodState wrong(String part, String words) {
        return new FoodState(walls, cages, lines, allowed, Optional.of(new Problem(part, words)));
    }
}
