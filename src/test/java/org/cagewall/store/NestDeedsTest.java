package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.RingColour;
import org.cagewall.almanac.RingLedger;
import org.cagewall.room.RingIssue;
import org.cagewall.room.RingsOf;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Crops;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.EggState;
import org.cagewall.room.nest.Nest;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.PartedFor;
import org.cagewall.room.nest.Round;
import org.cagewall.room.nest.Stage;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

/** What is recorded of eggs, chicks and pairs that are parted, and what of it is asked about or refused. */
class NestDeedsTest extends InMemory {

    private static final RingIssue JANUARY = new RingIssue(MonthDay.of(1, 1), RingsOf.THIS_YEAR);
    private static final RingIssue OCTOBER = new RingIssue(MonthDay.of(10, 1), RingsOf.NEXT_YEAR);

    @Override
    boolean isFurnished() {
        return true;
    }

    @Test
    void anEggShowsWhatItShowedLast() {
        told("egg-laid", "2026-03-12", "A1");
        candled("1", "clear", "2026-03-20");
        assertThat(egg("1").state()).isEqualTo(EggState.CLEAR);

        candled("1", "full", "2026-03-22");
        assertThat(egg("1").state()).isEqualTo(EggState.FULL);
        assertThat(egg("1").candlings()).hasSize(2);
    }

    @Test
    void aReasonForPartingThatAnEarlierVersionKeptIsFoundUnderItsNewName() {
        tell(line("parting-begun", "2026-04-10", "A1", "'reason':'hen-worn'"));
        useDatabase(session -> {
            session.write("UPDATE parting SET reason = 'HEN_TIRED'");
            updatesOf("V11__reasons_for_parting.sql").forEach(session::write);
        });

        assertThat(roomReadAnew()).isEqualTo(room());
    }

    @Test
    void anOlderLookRecordedLaterDoesNotHideTheYoungerOne() {
        told("egg-laid", "2026-03-12", "A1");
        candled("1", "full", "2026-03-22");
        candled("1", "unsure", "2026-03-18");

        assertThat(egg("1").state()).isEqualTo(EggState.FULL);
    }

    @Test
    void anEggThatWasClearIsAskedAboutWhenItHatches() {
        told("egg-laid", "2026-03-12", "A1");
        candled("1", "clear", "2026-03-20");

        assertThat(
                        question(
                                "{\"deed\":\"chick-hatched\",\"on\":\"2026-04-01\",\"cage\":\"A1\",\"mark\":\"1\",\"by\":\"Ines\"}"))
                .isEqualTo("Egg 1 is written down as clear. Was it full after all?");
    }

    @Test
    void withoutAMarkTheEggLaidFirstHatches() {
        told("egg-laid", "2026-03-12", "A1");
        told("egg-laid", "2026-03-14", "A1");
        candled("1", "clear", "2026-03-20");
        told("chick-hatched", "2026-04-01", "A1");

        assertThat(egg("2").state()).isEqualTo(EggState.HATCHED);
        assertThat(entry(room().head()).line()).contains("\"mark\":\"2\"");
    }

    @Test
    void aMovedEggKeepsItsRoundAndGetsALetterNoOtherHas() {
        told("egg-laid", "2026-03-12", "A1");
        told("egg-laid", "2026-03-14", "A1");
        sure("egg-moved", "2026-03-16", "A1", "'mark':'1','to':'A2'");
        sure("egg-moved", "2026-03-16", "A1", "'mark':'2','to':'A2'");

        Nest host = nest("A2");
        assertThat(host.eggs()).extracting(egg -> egg.name(host.cage())).containsExactly("A", "B");
        assertThat(host.eggs()).allMatch(egg -> egg.pair().cage() != host.cage());
        assertThat(nest("A1").eggs()).isEmpty();
        assertThat(nest("A1").all()).hasSize(2);
    }

    @Test
    void aMovedEggIsNamedByItsLetterWhereItLies() {
        told("egg-laid", "2026-03-12", "A1");
        sure("egg-moved", "2026-03-16", "A1", "'mark':'1','to':'A2','letter':'K'");
        tell(
                "{\"deed\":\"egg-candled\",\"on\":\"2026-03-20\",\"cage\":\"A2\",\"mark\":\"k\",\"finding\":\"full\",\"by\":\"Ines\"}");

        assertThat(egg("1").state()).isEqualTo(EggState.FULL);
        assertThat(
                        refusal(
                                "{\"deed\":\"egg-candled\",\"on\":\"2026-03-20\",\"cage\":\"A1\",\"mark\":\"1\",\"finding\":\"full\",\"by\":\"Ines\"}"))
                .isEqualTo("Egg 1 was in A2 on 20 March 2026. Say that cage.");
    }

    @Test
    void whatWasSeenBeforeTheMoveIsToldOfTheCageItWasIn() {
        told("egg-laid", "2026-03-12", "A1");
        sure("egg-moved", "2026-03-20", "A1", "'mark':'1','to':'A2'");
        candled("1", "full", "2026-03-18");

        assertThat(egg("1").state()).isEqualTo(EggState.FULL);
    }

    @Test
    void aLetterInUseIsRefusedAndTheNextFreeOneNamed() {
        told("egg-laid", "2026-03-12", "A1");
        told("egg-laid", "2026-03-14", "A1");
        sure("egg-moved", "2026-03-16", "A1", "'mark':'1','to':'A2'");

        assertThat(refusal(line("egg-moved", "2026-03-16", "A1", "'mark':'2','to':'A2','letter':'a'")))
                .isEqualTo("The letter a is on another egg. The next free letter is B.");
        assertThat(refusal(line("egg-moved", "2026-03-16", "A1", "'mark':'2','to':'A2','letter':'7'")))
                .contains("is no letter");
    }

    @Test
    void aLetterIsFreeAgainOnceItsChickIsWeaned() {
        hatched("1");
        sure("chick-moved", "2026-03-25", "A1", "'mark':'1','to':'A2'");
        sure("chick-weaned", "2026-04-14", "A2", "'mark':'A','to':'B2'");

        assertThat(room().lettersInUse()).isEmpty();
    }

    @Test
    void hostsThatMightHarmAnEggAreAskedAbout() {
        told("egg-laid", "2026-03-12", "A1");
        tell("{\"deed\":\"box-on\",\"on\":\"2026-03-12\",\"cage\":\"A2\",\"by\":\"Ines\"}");
        tell(
                "{\"deed\":\"paired-up\",\"on\":\"2026-03-12\",\"cage\":\"A2\",\"cock\":\"HB 24-013\",\"hen\":\"HB 24-014\",\"by\":\"Ines\"}");
        tell("{\"deed\":\"bird-marked\",\"bird\":\"HB 24-014\",\"trait\":\"egg-eater\",\"by\":\"Ines\"}");

        assertThat(question(line("egg-moved", "2026-03-16", "A1", "'mark':'1','to':'A2'")))
                .isEqualTo("In A2 is HB 24-014, marked as egg-eater. Put young there all the same?");
    }

    @Test
    void howManyEggsAHenCoversIsForTheOwnerToSay() {
        told("egg-laid", "2026-03-12", "A1");
        tell("{\"deed\":\"box-on\",\"on\":\"2026-03-12\",\"cage\":\"A2\",\"by\":\"Ines\"}");
        tell(
                "{\"deed\":\"paired-up\",\"on\":\"2026-03-12\",\"cage\":\"A2\",\"cock\":\"HB 24-013\",\"hen\":\"HB 24-014\",\"by\":\"Ines\"}");
        sure("egg-laid", "2026-03-13", "A2", "");
        tell("{\"deed\":\"room-set\",\"most-eggs\":1,\"most-chicks\":4,\"by\":\"Ines\"}");

        assertThat(room().settings().mostEggs()).isEqualTo(1);
        assertThat(room().settings().mostChicks()).isEqualTo(4);
        assertThat(question(line("egg-moved", "2026-03-16", "A1", "'mark':'1','to':'A2'")))
                .isEqualTo("Cage A2 has 1 egg already. Put another there?");
    }

    @Test
    void aPairBeingPartedIsNoHost() {
        told("egg-laid", "2026-03-12", "A1");
        tell("{\"deed\":\"box-on\",\"on\":\"2026-03-12\",\"cage\":\"A2\",\"by\":\"Ines\"}");
        tell(
                "{\"deed\":\"paired-up\",\"on\":\"2026-03-12\",\"cage\":\"A2\",\"cock\":\"HB 24-013\",\"hen\":\"HB 24-014\",\"by\":\"Ines\"}");
        tell(
                "{\"deed\":\"parting-begun\",\"on\":\"2026-03-13\",\"cage\":\"A2\",\"reason\":\"fighting\",\"by\":\"Ines\"}");

        assertThat(question(line("egg-moved", "2026-03-16", "A1", "'mark':'1','to':'A2'")))
                .contains("is being parted");
    }

    @Test
    void aChickIsRingedOnceByARingThatNobodyWears() {
        hatched("1");
        assertThat(refusal(line("chick-ringed", "2026-03-28", "A1", "'mark':'1','ring':'hb 24-011'")))
                .contains("already a bird");
        tell(line("chick-ringed", "2026-03-28", "A1", "'mark':'1','ring':'HB 26-031'"));

        assertThat(chick("1").ringWorn()).contains("HB 26-031");
        assertThat(refusal(line("chick-ringed", "2026-03-28", "A1", "'mark':'1','ring':'HB 26-032'")))
                .isEqualTo("Chick 1 wears ring HB 26-031 already.");
        assertThat(refusal("{\"deed\":\"bird-added\",\"bird\":\"HB 26-031\",\"sex\":\"hen\",\"by\":\"Ines\"}"))
                .contains("is on a chick in A1");
    }

    @Test
    void aChickRingedOutsideTheDaysOfItsSpeciesIsAskedAbout() {
        hatched("1");

        assertThat(question(line("chick-ringed", "2026-03-24", "A1", "'mark':'1','ring':'HB 26-031'")))
                .contains("go on from day 5 to day 10");
        assertThat(question(line("chick-ringed", "2026-03-31", "A1", "'mark':'1','ring':'HB 26-031'")))
                .contains("is 11 days old");

        assertThat(question(line("chick-ringed", "2026-03-22", "A1", "'mark':'1','ring':'HB 26-031'")))
                .contains("is 2 days old");
        assertThat(question(line("chick-ringed", "2026-04-09", "A1", "'mark':'1','ring':'HB 26-031'")))
                .contains("is 20 days old");
    }

    @Test
    void aRingedChickAnswersToItsRing() {
        hatched("1");
        tell(line("chick-ringed", "2026-03-28", "A1", "'mark':'1','ring':'HB 26-031'"));
        tell(line("ring-checked", "2026-03-29", "A1", "'mark':'HB 26-031'"));

        assertThat(chick("1").ring().flatMap(ring -> ring.checked())).contains(LocalDate.of(2026, 3, 29));
    }

    @Test
    void aWeanedChickIsABirdUnderItsRingWithItsParents() {
        hatched("1");
        tell(line("chick-ringed", "2026-03-28", "A1", "'mark':'1','ring':'HB 26-031'"));
        sure("chick-left-box", "2026-04-02", "A1", "'mark':'1'");
        sure("chick-weaned", "2026-04-12", "A1", "'mark':'1','to':'B2','sex':'cock'");

        Bird bird = room().bird("HB 26-031").orElseThrow();
        Pair pair = pair();
        assertThat(bird.father()).contains(pair.cock());
        assertThat(bird.mother()).contains(pair.hen());
        assertThat(bird.sex()).isEqualTo(Sex.COCK);
        assertThat(bird.hatched()).contains("2026-03-20");
        assertThat(bird.cage()).isEqualTo(room().cage("B2").map(cage -> cage.id()));
        assertThat(nest("A1").chicks()).isEmpty();
        assertThat(chick("1").weaned().map(weaning -> weaning.bird())).contains(bird.id());
    }

    @Test
    void aChickWithoutARingIsABirdUnderPairRoundAndMark() {
        hatched("1");
        sure("chick-weaned", "2026-04-12", "A1", "'mark':'1','to':'B2'");

        assertThat(room().bird("1-1-1")).isPresent();
    }

    @Test
    void aChickIsNotWeanedBeforeItHatched() {
        told("egg-laid", "2026-03-12", "A1");

        assertThat(refusal(line("chick-weaned", "2026-04-12", "A1", "'mark':'1','to':'B2'")))
                .contains("has not hatched yet");
        sure("chick-hatched", "2026-04-01", "A1", "'mark':'1'");
        assertThat(refusal(line("chick-weaned", "2026-03-20", "A1", "'mark':'1','to':'B2'")))
                .isEqualTo("Chick 1 hatched on 1 April 2026. Give that day or a later one.");
    }

    @Test
    void aYoungChickIsAskedAboutBeforeItIsWeaned() {
        hatched("1");

        assertThat(question(line("chick-weaned", "2026-04-05", "A1", "'mark':'1','to':'B2'")))
                .contains("cracking seed");
    }

    @Test
    void whatLeansOnAHatchingIsNamedWhenItIsStruckOut() {
        hatched("1");
        long hatching = room().head();
        tell(line("chick-ringed", "2026-03-28", "A1", "'mark':'1','ring':'HB 26-031'"));
        long ringing = room().head();

        assertThat(refusal("{\"deed\":\"struck-out\",\"entry\":" + hatching + ",\"why\":\"typo\",\"by\":\"Ines\"}"))
                .contains("entry " + ringing + " leans on entry " + hatching);
        strike(ringing);
        strike(hatching);
        assertThat(egg("1").state()).isEqualTo(EggState.NOT_CANDLED);
    }

    @Test
    void aStruckRingCanBeUsedAgain() {
        hatched("1");
        tell(line("chick-ringed", "2026-03-28", "A1", "'mark':'1','ring':'HB 26-031'"));
        strike(room().head());
        tell(line("chick-ringed", "2026-03-28", "A1", "'mark':'1','ring':'HB 26-031'"));

        assertThat(chick("1").ringWorn()).contains("HB 26-031");
    }

    @Test
    void anEggThatWasTakenOutDoesNotHatch() {
        told("egg-laid", "2026-03-12", "A1");
        tell(line("egg-removed", "2026-03-20", "A1", "'mark':'1','why':'broken'"));

        assertThat(refusal(line("chick-hatched", "2026-04-01", "A1", "'mark':'1'")))
                .isEqualTo("Egg 1 was taken out on 20 March 2026 (broken).");
        assertThat(nest("A1").eggs()).isEmpty();
    }

    @Test
    void aFullEggIsNotTakenOutInPassing() {
        told("egg-laid", "2026-03-12", "A1");
        candled("1", "full", "2026-03-20");

        assertThat(question(line("egg-removed", "2026-03-24", "A1", "'mark':'1'")))
                .contains("is full");
    }

    @Test
    void midSeasonANestIsBegunInOneGo() {
        tell(line("eggs-found", "2026-04-14", "A1", "'count':5,'first':'2026-03-12','chicks':2,'age':9"));

        Nest nest = nest("A1");
        assertThat(nest.eggs()).hasSize(5).extracting(egg -> egg.egg().mark()).containsExactly("3", "4", "5", "6", "7");
        assertThat(nest.chicks())
                .extracting(lying -> lying.chick().orElseThrow().hatched())
                .containsExactly(LocalDate.of(2026, 4, 5), LocalDate.of(2026, 4, 7));
        assertThat(nest.all()).allMatch(lying -> lying.egg().about());
        assertThat(nest.all().get(0).egg().laid()).isEqualTo(LocalDate.of(2026, 3, 12));
    }

    @Test
    void eggsOfASpeciesThatLaysDailyAreFoundADayApart() {
        tell(line("eggs-found", "2026-04-14", "A1", "'count':4,'first':'2026-04-01','apart':1"));

        assertThat(nest("A1").eggs())
                .extracting(egg -> egg.egg().laid().getDayOfMonth())
                .containsExactly(1, 2, 3, 4);
        assertThat(cage("A1").nestLook()).as("no chicks, no look").isEmpty();
    }

    @Test
    void howFarApartFoundEggsWereLaidIsTakenFromTheSpeciesWhereItIsNotTold() {
        canaries();
        tell(line("eggs-found", "2026-04-14", "A1", "'count':3,'first':'2026-04-01'"));

        assertThat(nest("A1").eggs())
                .extracting(egg -> egg.egg().laid().getDayOfMonth())
                .containsExactly(1, 2, 3);
    }

    /** On the fourth morning: common practice, no source. */
    @Test
    void canaryEggsThatWereTakenUpArePutBackTogetherUnderTheirNumbersAndAreSatOnFromThatDay() {
        canaries();
        for (int day = 10; day <= 13; day++) {
            told("egg-laid", "2026-04-" + day, "A1");
        }
        tell(line("dummies", "2026-04-12", "A1", "'count':3"));
        assertThat(putBack(LocalDate.of(2026, 4, 13))).hasValueSatisfying(task -> {
            assertThat(task.due()).isEqualTo(LocalDate.of(2026, 4, 13));
            assertThat(task.words()).isEqualTo(Message.of("tasks.do-put-back", List.of("1", "2", "3", "4")));
        });
        assertThat(question(line("eggs-put-back", "2026-04-12", "A1", ""))).contains("usually put back on");

        told("eggs-put-back", "2026-04-13", "A1");

        assertThat(nest("A1").eggs()).extracting(egg -> egg.egg().mark()).containsExactly("1", "2", "3", "4");
        assertThat(cage("A1").dummies()).isZero();
        assertThat(Almanac.of(room()).nest(cage("A1")).eggs())
                .allSatisfy(egg -> assertThat(egg.satFrom().orElseThrow().day()).isEqualTo(LocalDate.of(2026, 4, 13)));
        assertThat(putBack(LocalDate.of(2026, 4, 14))).isEmpty();
        assertThat(room()).isEqualTo(roomReadAnew());
    }

    /** Cockatiel cocks sit by day: common practice, no source. */
    @Test
    void aCockThatSitsByDayIsNotTakenFromEggsWithoutAsking() {
        told("egg-laid", "2026-04-08", "A1");
        String out = "{\"deed\":\"bird-moved\",\"bird\":\"" + cockOf("A1") + "\",\"to\":\"A3\",\"by\":\"Ines\"}";
        tell("{\"deed\":\"room-set\",\"species\":\"cockatiel\",\"by\":\"Ines\"}");
        assertThat(question(out)).contains("the cock sits as well").contains("1 egg");

        tell("{\"deed\":\"room-set\",\"species\":\"budgerigar\",\"by\":\"Ines\"}");
        tell(out);
    }

    private String cockOf(String cage) {
        return room().ring(room().pairIn(cage(cage)).orElseThrow().cock());
    }

    @Test
    void noBudgerigarsEggsAreAskedToBePutBack() {
        told("egg-laid", "2026-04-08", "A1");
        told("egg-laid", "2026-04-10", "A1");

        assertThat(putBack(LocalDate.of(2026, 4, 11))).isEmpty();
        assertThat(question(line("eggs-put-back", "2026-04-12", "A1", ""))).contains("not usually taken up");
    }

    @Test
    void aSitterReadsOfACanarysNestByItsOwnWord() {
        canaries();

        Task morning = DailyList.of(room(), LocalDate.of(2026, 4, 14), Audience.SITTER).stream()
                .filter(task -> task.kind() == Kind.MORNING && task.cage().equals(Optional.of("A1")))
                .findFirst()
                .orElseThrow();

        assertThat(morning.how().stream().map(Words.english()::say))
                .contains("Do not touch the nest pan, a bird may sit on it.")
                .noneMatch(sentence -> sentence.contains("box"));
        assertThat(Words.english().say(morning.see().orElseThrow())).endsWith("beside the nest pan");
    }

    private void canaries() {
        tell("{\"deed\":\"room-set\",\"species\":\"canary\",\"by\":\"Ines\"}");
    }

    private Optional<Task> putBack(LocalDate day) {
        return DailyList.of(room(), day, Audience.OWNER).stream()
                .filter(task -> task.kind() == Kind.PUT_BACK && task.isOpen())
                .findFirst();
    }

    @Test
    void chicksThatAreFoundHaveBeenLookedAtThatDay() {
        tell(line("eggs-found", "2026-04-14", "A1", "'count':0,'chicks':2,'age':9"));

        assertThat(Almanac.of(room()).nest(cage("A1")).nestLook()).contains(LocalDate.of(2026, 4, 16));
    }

    @Test
    void anEggToldLateFromLongBeforeTheRoundIsAskedAbout() {
        told("egg-laid", "2026-04-12", "A1");

        assertThat(question(line("egg-laid", "2026-04-02", "A1", "")))
                .contains("The first egg of the round in A1 was laid on 12 April 2026");
        told("egg-laid", "2026-04-10", "A1");
        assertThat(question(line("egg-laid", "2026-03-31", "A1", ""))).contains("was laid on 10 April 2026");
        sure("egg-laid", "2026-03-31", "A1", "");
        assertThat(nest("A1").eggs()).hasSize(3);
    }

    @Test
    void aHenThatLeavesEggsIsAskedAbout() {
        told("egg-laid", "2026-03-12", "A1");
        String away = moved(pair().hen(), "2026-03-20");

        assertThat(question(away)).contains("1 egg in A1 that may hatch");
        candled("1", "clear", "2026-03-18");
        tell(away);
    }

    @Test
    void aHenMayLeaveTheYoungestToTheCockFromThreeWeeksOn() {
        hatched("1");

        assertThat(question(moved(pair().hen(), "2026-04-09"))).contains("20 days old");
        tell(moved(pair().hen(), "2026-04-10"));
    }

    private String moved(long bird, String day) {
        String ring = room().bird(bird).orElseThrow().ring();
        return line("bird-moved", day, "A1", "'bird':'" + ring + "','to':'B1'").replace("\"cage\":\"A1\",", "");
    }

    @Test
    void anEggTwoMonthsAfterTheLastNeedsANewRound() {
        told("egg-laid", "2026-03-02", "A1");

        Recording late = store().record(
                        room(), List.of(line(line("egg-laid", "2026-05-01", "A1", ""))), LocalDate.of(2026, 5, 1), NOW);
        assertThat(said(late)).contains("Begin a new round first");
    }

    @Test
    void roundsOverlapAndABareMarkMeansTheYoungest() {
        hatched("1");
        tell(line("round-begun", "2026-04-10", "A1", ""));
        told("egg-laid", "2026-04-12", "A1");
        Pair pair = pair();
        assertThat(pair.rounds()).extracting(Round::number).containsExactly(1, 2);

        candled("1", "unsure", "2026-04-14");
        assertThat(pair().rounds().get(1).eggs().get(0).state()).isEqualTo(EggState.UNSURE);
        sure("chick-ringed", "2026-03-28", "A1", "'mark':'1','round':'1','ring':'HB 26-040'");
        assertThat(pair().rounds().get(0).eggs().get(0).chick().flatMap(Chick::ringWorn))
                .contains("HB 26-040");
    }

    @Test
    void theNestLookAndTheDummiesAreTheCages() {
        tell(line("nest-looked-at", "2026-04-14", "A1", "'chicks':3,'crops':'part','feet':'clean','damp':false"));
        tell(line("dummies", "2026-04-14", "A1", "'count':4"));

        assertThat(room().cage("A1").orElseThrow().nestLook()).hasValueSatisfying(look -> {
            assertThat(look.crops()).contains(Crops.PART);
            assertThat(look.chicks()).contains(3);
        });
        assertThat(room().cage("A1").orElseThrow().dummies()).isEqualTo(4);
        strike(room().head());
        assertThat(room().cage("A1").orElseThrow().dummies()).isZero();
    }

    @Test
    void aPairIsPartedForAReasonAndAStageIsSkippedWithAWord() {
        tell(line("parting-begun", "2026-04-10", "A1", "'reason':'rounds'"));
        tell(line("stage-skipped", "2026-04-11", "A1", "'stage':'box-turned','why':'box fell down'"));

        assertThat(pair().parting().map(parting -> parting.reason())).contains(PartedFor.ROUNDS);
        assertThat(pair().isSkipped(Stage.BOX_TURNED)).isTrue();
        assertThat(refusal(line("parting-begun", "2026-04-12", "A1", "'reason':'season'")))
                .contains("is being parted since 10 April 2026");
    }

    @Test
    void theOwnersDaysStandInPlaceOfTheTimetables() {
        tell(
                "{\"deed\":\"timetable-set\",\"value\":\"incubation\",\"earliest\":17,\"expected\":19,\"latest\":22,\"by\":\"Ines\"}");
        assertThat(room().settings().timetable()).containsEntry("budgerigar.incubation", "17 19 22");

        tell("{\"deed\":\"timetable-set\",\"value\":\"incubation\",\"by\":\"Ines\"}");
        assertThat(room().settings().timetable()).isEmpty();
        assertThat(
                        refusal(
                                "{\"deed\":\"timetable-set\",\"value\":\"incubation\",\"earliest\":20,\"expected\":19,\"latest\":22,\"by\":\"Ines\"}"))
                .contains("Earliest cannot be above expected");
    }

    @Test
    void theNextRingIsTheFirstThatNobodyWearsAndThatWasNotWrittenOff() {
        buy(2026);
        hatched("1");
        tell(line("chick-ringed", "2026-03-28", "A1", "'mark':'1','ring':'HB 26-101'"));
        tell("{\"deed\":\"ring-spoilt\",\"ring\":\"HB 26-102\",\"why\":\"lost\",\"by\":\"Ines\"}");
        tell("{\"deed\":\"bird-added\",\"bird\":\"hb 26-103\",\"sex\":\"hen\",\"by\":\"Ines\"}");

        assertThat(next("2026-04-14", JANUARY)).contains("HB 26-104");
        RingLedger.Line stock = RingLedger.of(room()).lines().get(0);
        assertThat(stock.worn()).isEqualTo(2);
        assertThat(stock.writtenOff()).isEqualTo(1);
        assertThat(stock.left()).hasSize(7);
    }

    @Test
    void aRingOnABirdThatHasGoneIsNotOfferedAgain() {
        buy(2026);
        tell("{\"deed\":\"bird-added\",\"bird\":\"HB 26-101\",\"sex\":\"hen\",\"by\":\"Ines\"}");
        tell("{\"deed\":\"bird-left\",\"bird\":\"HB 26-101\",\"how\":\"sold\",\"by\":\"Ines\"}");

        assertThat(room().bird("HB 26-101")).isEmpty();
        assertThat(next("2026-04-14", JANUARY)).contains("HB 26-102");
    }

    /**
     * Most of Europe issues the rings of a year on the first of October before it (Budgerigar World, "Europe changes ring
     * issue date"); Australia on the first of January (Australian National Budgerigar Council, by-law 7a).
     */
    @Test
    void aChickOfOctoberWearsTheRingOfTheYearThatFollows() {
        buy(2026);
        buy(2027);

        assertThat(next("2026-10-05", OCTOBER)).contains("HB 27-101");
        assertThat(next("2026-10-05", JANUARY)).contains("HB 26-101");
        assertThat(next("2026-09-30", OCTOBER)).contains("HB 26-101");
        assertThat(next("2028-03-01", JANUARY)).isEmpty();
    }

    /** 4.3 to 4.5 mm for a budgerigar: Budgerigar Society, ring page. 2.7 to 3.2 mm for a canary: common practice, no source. */
    @Test
    void noRingIsOfferedOfASizeThatTheSpeciesDoesNotWear() {
        tell("{\"deed\":\"rings-bought\",\"year\":2026,\"size\":\"2.9 mm\",\"first\":1,\"last\":9,"
                + "\"form\":\"CN 26-#\",\"by\":\"Ines\"}");
        assertThat(next("2026-04-14", JANUARY)).isEmpty();

        buy(2026);
        RingLedger ledger = RingLedger.of(room());
        LocalDate day = LocalDate.of(2026, 4, 14);
        assertThat(ledger.next(day, JANUARY, "budgerigar")).contains("HB 26-101");
        assertThat(ledger.next(day, JANUARY, "canary")).contains("CN 26-1");
        assertThat(ledger.next(day, JANUARY, "gouldian")).isEmpty();
    }

    /** The usual form is the year's two digits, a dash and the number; a ring of autumn is that of the year that follows. */
    @Test
    void aBoughtBirdCarriesTheYearOfItsRingAsItWasSaidOrAsItIsPrinted() {
        tell("{\"deed\":\"bird-added\",\"bird\":\"XK 25-014\",\"sex\":\"hen\",\"hatched\":\"2024\",\"by\":\"Ines\"}");
        tell("{\"deed\":\"bird-added\",\"bird\":\"XK 21-015\",\"sex\":\"hen\",\"hatched\":\"2024\",\"by\":\"Ines\"}");
        tell("{\"deed\":\"bird-added\",\"bird\":\"QZ 77\",\"sex\":\"cock\",\"ring-year\":2023,\"by\":\"Ines\"}");

        assertThat(ringYear("XK 25-014")).contains(2025);
        assertThat(ringYear("XK 21-015")).isEmpty();
        assertThat(ringYear("QZ 77")).contains(2023);

        tell("{\"deed\":\"ring-corrected\",\"bird\":\"QZ 77\",\"ring\":\"QZ 78\",\"ring-year\":2022,\"by\":\"Ines\"}");
        assertThat(ringYear("QZ 78")).contains(2022);
    }

    private Optional<Integer> ringYear(String ring) {
        return RingLedger.year(room(), room().bird(ring).orElseThrow()).map(RingLedger.Year::year);
    }

    @Test
    void aRingsColourIsThatOfItsBodysPageOrTheOwnersOwn() {
        buy(2026);
        assertThat(RingLedger.year(room(), "HB 26-101")).contains(new RingLedger.Year(2026, Optional.empty()));

        tell("{\"deed\":\"rings-set\",\"body\":\"society\",\"by\":\"Ines\"}");
        assertThat(RingLedger.year(room(), "hb 26-101").flatMap(RingLedger.Year::colour))
                .contains(new RingLedger.OfPage(RingColour.DARK_GREEN));

        tell("{\"deed\":\"rings-bought\",\"year\":2027,\"size\":\"4.2 mm\",\"first\":1,\"last\":9,"
                + "\"colour\":\"pale blue\",\"by\":\"Ines\"}");
        assertThat(RingLedger.year(room(), "27-003").flatMap(RingLedger.Year::colour))
                .contains(new RingLedger.OfOwner("pale blue"));
        assertThat(RingLedger.year(room(), "XK 25-014")).isEmpty();
    }

    @Test
    void theOwnerSaysThatRingsOfSeptemberAreOfTheSameYear() {
        tell("{\"deed\":\"room-set\",\"rings-issued\":\"--09-01\",\"by\":\"Ines\"}");
        assertThat(room().settings().ringIssue().of()).isEqualTo(RingsOf.NEXT_YEAR);

        tell("{\"deed\":\"rings-set\",\"issued-for\":\"this-year\",\"by\":\"Ines\"}");
        assertThat(room().settings().ringIssue().issued(2026)).isEqualTo(LocalDate.of(2026, 9, 1));
    }

    @Test
    void aSecondRingThatOpensIsPutOnAndTakenOff() {
        tell("{\"deed\":\"split-ring-put\",\"bird\":\"HB 24-013\",\"ring\":\"yellow 7\",\"by\":\"Ines\"}");
        assertThat(room().bird("HB 24-013").flatMap(Bird::splitRing)).contains("yellow 7");

        tell("{\"deed\":\"split-ring-put\",\"bird\":\"HB 24-013\",\"by\":\"Ines\"}");
        assertThat(room().bird("HB 24-013").flatMap(Bird::splitRing)).isEmpty();
    }

    @Test
    void ringsWithoutAPlaceForTheNumberAreRefused() {
        assertThat(
                        refusal(
                                "{\"deed\":\"rings-bought\",\"year\":2026,\"size\":\"4.2\",\"first\":1,\"last\":9,\"form\":\"HB 26\",\"by\":\"Ines\"}"))
                .contains("no one place for the number");
    }

    private void buy(int year) {
        tell("{\"deed\":\"rings-bought\",\"year\":" + year
                + ",\"size\":\"4.2 mm\",\"first\":101,\"last\":110,\"form\":\"HB " + year % 100
                + "-###\",\"by\":\"Ines\"}");
    }

    private Optional<String> next(String day, RingIssue issue) {
        return RingLedger.of(room()).next(LocalDate.parse(day), issue, "budgerigar");
    }

    // ------------------------------------------------------------------ telling

    /** A chick of an egg laid on the second of March that hatched on the twentieth. */
    private void hatched(String mark) {
        told("egg-laid", "2026-03-02", "A1");
        sure("chick-hatched", "2026-03-20", "A1", "'mark':'" + mark + "'");
    }

    private void told(String deed, String day, String cage) {
        tell(line(deed, day, cage, ""));
    }

    private void candled(String mark, String finding, String day) {
        tell(line("egg-candled", day, "A1", "'mark':'" + mark + "','finding':'" + finding + "'"));
    }

    private void sure(String deed, String day, String cage, String fields) {
        Recording recording = recorded(line(line(deed, day, cage, fields)).beingSure());
        assertThat(recording).as(said(recording)).isInstanceOf(Recording.Done.class);
    }

    private static String line(String deed, String day, String cage, String fields) {
        return ("{'deed':'" + deed + "','on':'" + day + "','cage':'" + cage + "'" + (fields.isEmpty() ? "" : ",")
                        + fields + ",'by':'Ines'}")
                .replace('\'', '"');
    }

    private void strike(long entry) {
        tell("{\"deed\":\"struck-out\",\"entry\":" + entry + ",\"why\":\"typo\",\"by\":\"Ines\"}");
    }

    private Pair pair() {
        return room().pairIn(cage("A1")).orElseThrow();
    }

    private Nest nest(String cage) {
        return room().nest(cage(cage));
    }

    private Egg egg(String mark) {
        return pair().rounds().get(0).eggs().stream()
                .filter(egg -> egg.mark().equals(mark))
                .findFirst()
                .orElseThrow();
    }

    private Chick chick(String mark) {
        return egg(mark).chick().orElseThrow();
    }
}
