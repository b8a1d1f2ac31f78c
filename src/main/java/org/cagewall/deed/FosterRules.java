package org.cagewall.deed;

import java.util.List;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Pair;
import org.cagewall.text.Message;

/**
 * Rules about eggs and chicks moved to another nest. What speaks against a host is asked about and never forbidden: the
 * keeper has moved it already. Pure; any thread.
 */
final class FosterRules {

    private FosterRules() {}

    static List<Rule> of(String cage, String mark, String to, Optional<String> letter) {
        return List.of(
                CageRules.twoNests(cage, to),
                CageRules.inUse(to),
                letterIsFree(cage, mark, letter),
                hostHangsABox(to),
                hostIsNoSickroom(to),
                hostHasAPair(to),
                hostIsNotBeingParted(to),
                hostHarmsNoYoung(to));
    }

    static Rule hasRoomForAnEgg(String to) {
        return host(to, (scene, cage) -> {
            int eggs = scene.nest(cage.id()).eggs().size();
            return Ruling.asksIf(eggs >= scene.room().settings().mostEggs(), "nest.host-eggs", cage.name(), eggs);
        });
    }

    static Rule hasRoomForAChick(String to) {
        return host(to, (scene, cage) -> {
            int chicks = scene.nest(cage.id()).chicks().size();
            return Ruling.asksIf(
                    chicks >= scene.room().settings().mostChicks(), "nest.host-chicks", cage.name(), chicks);
        });
    }

    /** The letter it has already, or the first of the alphabet that no egg or chick in a nest has. */
    static String letterFor(Lying lying, Scene scene) {
        return lying.egg().letter().orElseGet(() -> scene.room().nextLetter());
    }

    private static Rule letterIsFree(String cage, String mark, Optional<String> letter) {
        return scene -> {
            if (letter.isEmpty()) {
                return Ruling.ALLOWED;
            }
            String wanted = letter.get();
            if (!wanted.matches("\\p{L}{1,3}")) {
                return Ruling.refuses("nest.no-letter", wanted);
            }
            boolean itsOwn = scene.room()
                    .cage(cage)
                    .flatMap(from -> scene.nest(from.id()).find(mark, Optional.empty(), scene.on()))
                    .flatMap(lying -> lying.egg().letter())
                    .filter(wanted::equalsIgnoreCase)
                    .isPresent();
            boolean taken = scene.room().lettersInUse().stream().anyMatch(wanted::equalsIgnoreCase);
            return Ruling.refusesIf(
                    taken && !itsOwn, "nest.letter-taken", wanted, scene.room().nextLetter());
        };
    }

    private static Rule hostHangsABox(String to) {
        return host(
                to, (scene, cage) -> Ruling.asksIf(cage.box().hanging().isEmpty(), "nest.host-no-box", cage.name()));
    }

    private static Rule hostIsNoSickroom(String to) {
        return host(
                to,
                (scene, cage) -> Ruling.asksIf(cage.use().isSickroom(), "nest.host-sickroom", cage.name(), cage.use()));
    }

    private static Rule hostHasAPair(String to) {
        return host(to, (scene, cage) -> Ruling.asksIf(scene.pairAt(cage).isEmpty(), "nest.host-no-pair", cage.name()));
    }

    private static Rule hostIsNotBeingParted(String to) {
        return host(
                to,
                (scene, cage) -> Ruling.asksIf(
                        scene.pairAt(cage).filter(Pair::isBeingParted).isPresent(), "nest.host-parting", cage.name()));
    }

    private static Rule hostHarmsNoYoung(String to) {
        return host(to, (scene, cage) -> scene.room()
                .harmingYoungIn(cage)
                .map(bird -> (Ruling) new Ruling.Asks(Message.of(
                        "nest.host-harms",
                        cage.name(),
                        bird.ring(),
                        bird.harmsYoung().orElseThrow())))
                .orElse(Ruling.ALLOWED));
    }

    private interface HostRule {
        Ruling judge(Scene scene, Cage cage);
    }

    private static Rule host(String to, HostRule rule) {
        return scene ->
                scene.room().cage(to).map(cage -> rule.judge(scene, cage)).orElse(Ruling.ALLOWED);
    }
}
