package org.cagewall.deed;

import java.util.stream.Stream;
import org.cagewall.room.Person;
import org.cagewall.room.Role;

/** Rules about people and the owner's days away. Pure; any thread. */
final class PeopleRules {

    private PeopleRules() {}

    static Rule canBeDialled(String phone) {
        return scene ->
                PhoneNumbers.whyNot(phone).<Ruling>map(Ruling.Refused::new).orElse(Ruling.ALLOWED);
    }

    static Rule known(String person) {
        return scene -> scene.room().person(person).isPresent() ? Ruling.ALLOWED : unknown(scene, person);
    }

    static Ruling unknown(Scene scene, String person) {
        Stream<String> names = scene.room().people().stream().map(Person::name);
        return Names.nearest(person, names)
                .map(near -> Ruling.refuses("deed.person-unknown", person, near))
                .orElse(Ruling.refuses("deed.first-owner"));
    }

    static Rule nameIsFree(String person) {
        return scene -> Ruling.refusesIf(scene.room().person(person).isPresent(), "deed.person-taken", person);
    }

    static Rule anOwnerRemains(String person, java.util.Optional<Role> role) {
        return scene -> {
            boolean wasOwner = scene.room()
                    .person(person)
                    .filter(it -> it.role() == Role.OWNER)
                    .isPresent();
            long owners = scene.room().people().stream()
                    .filter(it -> it.role() == Role.OWNER)
                    .count();
            boolean stays = role.map(it -> it == Role.OWNER).orElse(true);
            return Ruling.refusesIf(wasOwner && !stays && owners == 1, "deed.last-owner", person);
        };
    }
}
