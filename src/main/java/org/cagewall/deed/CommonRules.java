package org.cagewall.deed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Person;
import org.cagewall.room.Role;

/** What is asked of every deed. Pure; any thread. */
final class CommonRules {

    /** No birdroom of today has records from before this. */
    static final LocalDate EARLIEST = LocalDate.of(1950, 1, 1);

    private CommonRules() {}

    static List<Rule> of(Line line) {
        List<Rule> rules = new ArrayList<>();
        rules.add(CommonRules::dateHasCome);
        rules.add(scene -> someoneRecords(scene, line.deed()));
        if (line.deed() instanceof SettingUp) {
            rules.add(CommonRules::noSitterSetsUp);
        }
        line.told().cage().ifPresent(cage -> rules.add(CageRules.known(cage)));
        return rules;
    }

    private static Ruling dateHasCome(Scene scene) {
        if (scene.on().isAfter(scene.today())) {
            return Ruling.refuses("deed.future", scene.on(), scene.today());
        }
        return Ruling.refusesIf(scene.on().isBefore(EARLIEST), "deed.long-ago", scene.on());
    }

    private static Ruling someoneRecords(Scene scene, Deed deed) {
        Optional<String> by = scene.told().by();
        if (by.isEmpty()) {
            boolean firstOwner = scene.room().people().isEmpty()
                    && deed instanceof RoomDeed.PersonAdded added
                    && added.role() == Role.OWNER;
            if (firstOwner) {
                return Ruling.ALLOWED;
            }
            return scene.room().people().isEmpty()
                    ? Ruling.refuses("deed.first-owner")
                    : Ruling.refuses("deed.by-missing");
        }
        if (scene.person().isPresent()) {
            return Ruling.ALLOWED;
        }
        if (scene.room().people().isEmpty()) {
            boolean names = deed instanceof RoomDeed.PersonAdded added
                    && added.role() == Role.OWNER
                    && Names.same(added.person(), by.get());
            return Ruling.refusesIf(!names, "deed.first-owner");
        }
        return PeopleRules.unknown(scene, by.get());
    }

    private static Ruling noSitterSetsUp(Scene scene) {
        return Ruling.refusesIf(
                scene.person()
                        .map(Person::role)
                        .filter(role -> role == Role.SITTER)
                        .isPresent(),
                "deed.sitter");
    }
}
