package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The rules in the words of the trade, on a small birdroom with a pair in A1 and a flight in B2: each with a deed that it
 * refuses or asks about, what is said, and one like it that is taken.
 */
class RulesTest extends InMemory {

    /**
     * One rule.
     *
     * @param given what was recorded before
     * @param odd the line that is refused, or asked about
     * @param said a part of what is said to it
     * @param fine a line like it that is taken
     */
    private record Example(String rule, String given, String odd, String said, String fine) {}

    private static final List<Example> REFUSED = List.of(
            rule("a bird below six months is not grown (180 days: Myhrvold et al. 2015, AnAge entry 01262)")
                    .given("bird-added", "'bird':'Y','sex':'hen','hatched':'2025-10-20'")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'Y','sure':true", "not grown itself")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014'"),
            rule("a day that has not come is no day to record")
                    .refuses("box-on", "'cage':'A2','on':'2026-04-15'", "has not come yet")
                    .takes("box-on", "'cage':'A2','on':'2026-04-14'"),
            rule("a day before anybody kept such a record is a slip")
                    .refuses("box-on", "'cage':'A2','on':'1949-12-31'", "too long ago")
                    .takes("box-on", "'cage':'A2','on':'1950-01-01'"),
            rule("whoever records is somebody of this room")
                    .refuses("box-on", "'cage':'A2','by':'Jaon'", "Did you mean Joan?")
                    .takes("box-on", "'cage':'A2','by':'joan'"),
            rule("a sitter does not set the birdroom up")
                    .refuses("cage-retired", "'cage':'A3','by':'Tomas'", "sitter")
                    .takes("cage-retired", "'cage':'A3','by':'Joan'"),
            rule("a cage that is not there is named by the nearest that is")
                    .refuses("cage-cleaned", "'cage':'A9'", "Did you mean A1?")
                    .takes("cage-cleaned", "'cage':'a1'"),
            rule("a cage out of use is left alone")
                    .given("cage-retired", "'cage':'A3'")
                    .refuses("cage-cleaned", "'cage':'A3'", "out of use")
                    .takes("cage-cleaned", "'cage':'A2'"),
            rule("a cage that is part of another is not used by itself")
                    .given("cages-joined", "'cage':'A2','with':'A3'")
                    .refuses("cage-cleaned", "'cage':'A3'", "part of A2")
                    .takes("cage-cleaned", "'cage':'A2'"),
            rule("a cage name is used once, in whatever case of letters")
                    .refuses(
                            "cage-added", "'cage':'a1','wall':'North wall','row':2,'column':4,'use':'stock'", "already")
                    .takes("cage-added", "'cage':'B4','wall':'North wall','row':2,'column':4,'use':'stock'"),
            rule("a cage name holds no slash")
                    .refuses("cage-added", "'cage':'B/4','wall':'North wall','row':2,'column':4,'use':'stock'", "slash")
                    .takes("cage-added", "'cage':'B-4','wall':'North wall','row':2,'column':4,'use':'stock'"),
            rule("a cage hangs on a wall that there is")
                    .refuses("cage-placed", "'cage':'A3','wall':'North','row':2,'column':4", "Did you mean North wall?")
                    .takes("cage-placed", "'cage':'A3','wall':'north wall','row':2,'column':4"),
            rule("a place on a wall holds one cage")
                    .refuses(
                            "cage-placed",
                            "'cage':'A3','wall':'North wall','row':1,'column':1",
                            "already has that place")
                    .takes("cage-placed", "'cage':'A3','wall':'North wall','row':1,'column':4"),
            rule("a cage hangs on the wall and not beside it")
                    .refuses("cage-placed", "'cage':'A3','wall':'North wall','row':3,'column':1", "not on it")
                    .takes("cage-placed", "'cage':'A3','wall':'North wall','row':2,'column':3"),
            rule("a wall is named once")
                    .refuses("wall-added", "'wall':'NORTH WALL','rows':1,'columns':1", "already a wall")
                    .takes("wall-added", "'wall':'South wall','rows':1,'columns':1"),
            rule("a sign goes by its name, which every language shares, and other words stand in the note")
                    .refuses(
                            "check",
                            "'cage':'A1','answer':'different','how':'hand','signs':['puffed-up','hen quiet']",
                            "hen quiet is no sign that a check knows. Choose from on-floor, puffed-up, not-eating")
                    .takes(
                            "check",
                            "'cage':'A1','answer':'different','how':'hand','signs':['puffed-up'],'note':'hen quiet'"),
            rule("a cage with birds stays in use")
                    .refuses("cage-retired", "'cage':'B2'", "still holds 6 birds")
                    .takes("cage-retired", "'cage':'A3'"),
            rule("a cage whose bird is at a show is not empty")
                    .given("bird-moved", "'bird':'HB 24-013','to':'A3'")
                    .given("bird-out", "'bird':'HB 24-013','where':'show'")
                    .refuses("cage-retired", "'cage':'A3'", "still holds 1 bird")
                    .takes("cage-retired", "'cage':'A2'"),
            rule("a cage that another is part of stays in use")
                    .given("cages-joined", "'cage':'A2','with':'A3'")
                    .refuses("cage-retired", "'cage':'A2'", "A3 is part of A2")
                    .takes("cages-split", "'cage':'A2','with':'A3'"),
            rule("two cages are joined, not one with itself")
                    .refuses("cages-joined", "'cage':'A2','with':'a2'", "joined with itself")
                    .takes("cages-joined", "'cage':'A2','with':'A3'"),
            rule("only joined cages are split")
                    .refuses("cages-split", "'cage':'A2','with':'A3'", "not joined")
                    .takes("cages-joined", "'cage':'A2','with':'A3'"),
            rule("a pair is not joined to another cage as its part")
                    .refuses("cages-joined", "'cage':'A2','with':'A1'", "already holds pair 1")
                    .takes("cages-joined", "'cage':'A1','with':'A2'"),
            rule("a person is added once")
                    .refuses("person-added", "'person':'joan','role':'sitter'", "already somebody")
                    .takes("person-added", "'person':'Mara','role':'sitter'"),
            rule("the room keeps an owner")
                    .refuses("person-changed", "'person':'Ines','role':'keeper'", "only owner")
                    .takes("person-changed", "'person':'Joan','role':'owner'"),
            rule("heat is acted on before it is phoned about")
                    .refuses("room-set", "'heat-act':33", "cannot be above")
                    .takes("room-set", "'heat-act':31"),
            rule("cold is phoned about below the heat that is acted on")
                    .refuses("room-set", "'heat-act':16,'cold-phone':16", "must be below")
                    .takes("room-set", "'cold-phone':3"),
            rule("something different is said with a sign or a note")
                    .refuses("check", "'cage':'A1','answer':'different','how':'hand'", "say what is different")
                    .takes("check", "'cage':'A1','answer':'different','how':'hand','note':'hen quiet'"),
            rule("the time zone stays once there are cages")
                    .refuses("room-set", "'zone':'Asia/Tokyo'", "stays")
                    .takes("room-set", "'zone':'Europe/London'"),
            rule("a reading says something")
                    .refuses("room-read", "'by':'Ines'", "nothing was read")
                    .takes("room-read", "'humidity':50"),
            rule("the low temperature is not above the high one")
                    .refuses("room-read", "'high':18,'low':22", "above the high")
                    .takes("room-read", "'high':22,'low':18"),
            rule("a ring is worn by one bird, gone ones with them")
                    .given("bird-left", "'bird':'HB 24-014','how':'died'")
                    .refuses("bird-added", "'bird':'hb 24-014','sex':'hen'", "already a bird")
                    .takes("bird-added", "'bird':'HB 24-099','sex':'hen'"),
            rule("a bird has hatched by now")
                    .refuses("bird-added", "'bird':'X','sex':'hen','hatched':'2027'", "has not come yet")
                    .takes("bird-added", "'bird':'X','sex':'hen','hatched':'2026'"),
            rule("no bird is its own parent")
                    .refuses("parents-set", "'bird':'HB 24-011','father':'HB 24-011'", "own parent")
                    .takes("parents-set", "'bird':'HB 24-011','father':'HB 24-013'"),
            rule("no bird is its own grandparent")
                    .given("parents-set", "'bird':'HB 24-011','father':'HB 24-013'")
                    .refuses("parents-set", "'bird':'HB 24-013','father':'HB 24-011'", "own ancestor")
                    .takes("parents-set", "'bird':'HB 24-012','father':'HB 24-011'"),
            rule("a father is a cock")
                    .refuses("parents-set", "'bird':'HB 26-015','father':'HB 24-012'", "not a cock")
                    .takes("parents-set", "'bird':'HB 26-015','father':'HB 24-011'"),
            rule("setting parents names one")
                    .refuses("parents-set", "'bird':'HB 26-015'", "name the father")
                    .takes("parents-set", "'bird':'HB 26-015','mother':'HB 24-012'"),
            rule("a bird is moved out of the cage it stands in")
                    .refuses("bird-moved", "'bird':'HB 24-013','to':'A2','from':'B2'", "not in B2 but in B1")
                    .takes("bird-moved", "'bird':'HB 24-013','to':'A2','from':'B1'"),
            rule("a bird is moved to another cage")
                    .refuses("bird-moved", "'bird':'HB 24-013','to':'B1'", "already stands")
                    .takes("bird-moved", "'bird':'HB 24-013','to':'B2'"),
            rule("a bird that left is not moved")
                    .given("bird-left", "'bird':'HB 24-013','how':'sold','on':'2026-04-01'")
                    .refuses("bird-moved", "'bird':'HB 24-013','to':'B2'", "left on 1 April 2026")
                    .takes("bird-moved", "'bird':'HB 24-013','to':'B2','on':'2026-03-01'"),
            rule("a bird did not leave before it was last moved")
                    .given("bird-moved", "'bird':'HB 24-013','to':'B2','on':'2026-04-10'")
                    .refuses("bird-left", "'bird':'HB 24-013','how':'sold','on':'2026-04-05'", "after it had left")
                    .takes("bird-left", "'bird':'HB 24-013','how':'sold','on':'2026-04-10'"),
            rule("a bird was not paired up after it had left")
                    .refuses("bird-left", "'bird':'HB 24-011','how':'died','on':'2026-02-01'", "it had left")
                    .takes("bird-left", "'bird':'HB 24-011','how':'died','on':'2026-03-02'"),
            rule("a name is not another bird's ring")
                    .refuses("bird-named", "'bird':'HB 24-013','name':'hb 24-014'", "already a bird")
                    .takes("bird-named", "'bird':'HB 24-013','name':'Pip'"),
            rule("a bird is out once")
                    .given("bird-out", "'bird':'HB 24-013','where':'vet'")
                    .refuses("bird-out", "'bird':'HB 24-013','where':'show'", "out already (at the vet)")
                    .takes("bird-back", "'bird':'HB 24-013'"),
            rule("only a bird that is out comes back")
                    .refuses("bird-back", "'bird':'HB 24-013'", "not out")
                    .takes("bird-out", "'bird':'HB 24-013','where':'loan'"),
            rule("only a loose bird is found")
                    .refuses("bird-found", "'bird':'HB 24-013'", "not known to be loose")
                    .takes("bird-loose", "'bird':'HB 24-013'"),
            rule("either a bird is named, or a number given")
                    .refuses("bird-left", "'bird':'HB 24-013','count':1,'how':'sold'", "one of the two")
                    .takes("bird-left", "'count':1,'cage':'B2','how':'sold'"),
            rule("a number of birds leaves a cage")
                    .refuses("bird-left", "'count':1,'how':'sold'", "from which cage")
                    .takes("bird-left", "'bird':'HB 24-013','cage':'B1','how':'sold'"),
            rule("a bird leaves from the cage it stands in")
                    .refuses("bird-left", "'bird':'HB 24-013','cage':'B2','how':'sold'", "not in B2 but in B1")
                    .takes("bird-left", "'bird':'HB 24-013','cage':'B1','how':'sold'"),
            rule("no more birds leave than there are")
                    .refuses("bird-left", "'count':6,'cage':'B2','how':'sold'", "has 5 birds")
                    .takes("bird-left", "'count':5,'cage':'B2','how':'sold'"),
            rule("a pair is a cock and a hen")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-014','hen':'HB 24-013'", "known as a hen")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014'"),
            rule("a bird is not paired with itself")
                    .given("bird-added", "'bird':'Y','sex':'unknown','hatched':'2024'")
                    .refuses("paired-up", "'cage':'A2','cock':'Y','hen':'Y'", "with itself")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'Y'"),
            rule("a cage holds one pair")
                    .refuses("paired-up", "'cage':'A1','cock':'HB 24-013','hen':'HB 24-014'", "already holds pair 1")
                    .takes("paired-up", "'cage':'A3','cock':'HB 24-013','hen':'HB 24-014'"),
            rule("a pair's label is its own")
                    .refuses(
                            "paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014','pair':'1'", "already in A1")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014','pair':'1b'"),
            rule("a pair stays a cock and a hen")
                    .refuses("bird-sexed", "'bird':'HB 24-011','sex':'hen'", "not be a cock and a hen")
                    .takes("bird-sexed", "'bird':'HB 24-011','sex':'unknown'"),
            rule("a round is a pair's")
                    .refuses("round-begun", "'cage':'A2'", "had no pair")
                    .takes("round-begun", "'cage':'A1'"),
            rule("a round that has no eggs yet is not followed by another")
                    .given("round-begun", "'cage':'A1'")
                    .refuses("round-begun", "'cage':'A1'", "no eggs yet")
                    .takes("egg-laid", "'cage':'A1'"),
            rule("only an open round ends")
                    .refuses("round-ended", "'cage':'A1'", "no round is open")
                    .takes("egg-laid", "'cage':'A1'"),
            rule("an egg mark is used once in a round")
                    .given("egg-laid", "'cage':'A1','on':'2026-04-10'")
                    .refuses("egg-laid", "'cage':'A1','mark':'1'", "next free mark is 2")
                    .takes("egg-laid", "'cage':'A1','mark':'2'"),
            rule("a row that is walked has cages")
                    .refuses("row-checked", "'wall':'North wall','row':3", "has no cages")
                    .takes("row-checked", "'wall':'North wall','row':2"),
            rule("a task is written as one")
                    .refuses("task-done", "'task':'A1 morning'", "DATE/CAGE/KIND")
                    .takes("task-done", "'task':'2026-04-14/A1/morning'"),
            rule("a note says something")
                    .refuses("noted", "'cage':'A1'", "note is empty")
                    .takes("noted", "'cage':'A1','note':'all quiet'"),
            rule("days away end after they begin")
                    .refuses(
                            "away-planned",
                            "'from':'2026-05-10','to':'2026-05-09','sitter':'Tomas'",
                            "before they begin")
                    .takes("away-planned", "'from':'2026-05-10','to':'2026-05-10','sitter':'Tomas'"),
            rule("days away are near enough to plan")
                    .refuses("away-planned", "'from':'2026-05-10','to':'9999-05-09','sitter':'Tomas'", "three years")
                    .takes("away-planned", "'from':'2026-05-10','to':'2029-04-14','sitter':'Tomas'"),
            rule("days away do not overlap")
                    .given("away-planned", "'from':'2026-05-10','to':'2026-05-20','sitter':'Tomas'")
                    .refuses("away-planned", "'from':'2026-05-20','to':'2026-05-25','sitter':'Joan'", "already planned")
                    .takes("away-planned", "'from':'2026-05-21','to':'2026-05-25','sitter':'Joan'"),
            rule("no days away are planned for the year 2400")
                    .refuses("away-planned", "'from':'2400-02-01','to':'2400-02-29','sitter':'Tomas'", "three years")
                    .takes("away-planned", "'from':'2028-02-01','to':'2028-02-29','sitter':'Tomas'"),
            rule("days away begin when there was a birdroom")
                    .refuses("away-planned", "'from':'1026-05-10','to':'2026-05-20','sitter':'Tomas'", "too long ago")
                    .takes("away-planned", "'from':'2026-04-10','to':'2026-05-20','sitter':'Tomas'"),
            rule("days away that are changed end after they begin")
                    .given("away-planned", "'from':'2026-05-10','to':'2026-05-20','sitter':'Tomas'")
                    .refuses("away-changed", "'to':'2026-05-09'", "before they begin")
                    .takes("away-changed", "'to':'2026-05-10'"),
            rule("days away that are changed do not overlap others")
                    .given("away-planned", "'from':'2026-05-10','to':'2026-05-20','sitter':'Tomas'")
                    .given("away-planned", "'from':'2026-06-10','to':'2026-06-20','sitter':'Tomas'")
                    .refuses("away-changed", "'to':'2026-06-10'", "already planned")
                    .takes("away-changed", "'to':'2026-06-09'"),
            rule("a phone number can be dialled")
                    .refuses("person-added", "'person':'Mara','role':'sitter','phone':'ask Ines'", "no phone number")
                    .takes("person-added", "'person':'Mara','role':'sitter','phone':'+44 (0)555/0142-3'"),
            rule("a phone number has three digits")
                    .refuses("person-changed", "'person':'Joan','phone':'+12'", "at least three digits")
                    .takes("person-changed", "'person':'Joan','phone':'112'"),
            rule("who looks after the birds is known")
                    .refuses(
                            "away-planned",
                            "'from':'2026-05-10','to':'2026-05-20','sitter':'Tom'",
                            "Did you mean Tomas?")
                    .takes("away-planned", "'from':'2026-05-10','to':'2026-05-20','sitter':'Tomas'"),
            rule("only days away that run are ended")
                    .given("away-planned", "'from':'2026-04-14','to':'2026-05-20','sitter':'Tomas'")
                    .refuses("away-ended", "'on':'2026-04-13'", "nobody is away")
                    .takes("away-ended", "'on':'2026-04-14'"),
            rule("an entry that is read is there")
                    .refuses("entry-seen", "'entry':999", "no entry 999")
                    .takes("entry-seen", "'entry':1"),
            rule("a card is pencilled on once it is printed")
                    .refuses("card-pencilled", "'cage':'A1'", "no card was printed")
                    .takes("card-printed", "'cage':'A1'"),
            rule("rings run upwards")
                    .refuses("rings-bought", "'year':2026,'size':'4.2','first':9,'last':1", "Swap them")
                    .takes("rings-bought", "'year':2026,'size':'4.2','first':1,'last':9"),
            rule("rings are bought once")
                    .given("rings-bought", "'year':2026,'size':'4.2','first':1,'last':9")
                    .refuses("rings-bought", "'year':2026,'size':'4.2','first':9,'last':20", "already in the stock")
                    .takes("rings-bought", "'year':2026,'size':'4.2','first':10,'last':20"),
            rule("a ring on a leg is not spoilt")
                    .refuses("ring-spoilt", "'ring':'HB 24-011'", "already a bird")
                    .takes("ring-spoilt", "'ring':'HB 24-099'"),
            rule("a strike names an entry")
                    .refuses("struck-out", "'entry':999,'why':'typo'", "no entry 999")
                    .takes("struck-out", "'entry':17,'why':'typo'"),
            rule("what others lean on is not struck out")
                    .refuses("struck-out", "'entry':10,'why':'typo'", "leans on entry 10")
                    .takes("struck-out", "'entry':15,'why':'typo'"),
            rule("a sitter strikes out only what the sitter recorded")
                    .refuses("struck-out", "'entry':17,'why':'typo','by':'Tomas'", "only what the sitter recorded")
                    .takes("struck-out", "'entry':17,'why':'typo','by':'Joan'"));

    private static final List<Example> ASKED = List.of(
            rule("a cock below ten months is young for a pair (Petcare Information and Advisory Service Australia)")
                    .given("bird-added", "'bird':'Y','sex':'cock','hatched':'2025-06-20'")
                    .given("bird-added", "'bird':'Z','sex':'cock','hatched':'2025-06-13'")
                    .refuses("paired-up", "'cage':'A2','cock':'Y','hen':'HB 24-014'", "Y is 9 months old")
                    .takes("paired-up", "'cage':'A2','cock':'Z','hen':'HB 24-014'"),
            rule("a hen below eleven months is young for a pair (breeders' pages: 10 to 12)")
                    .given("bird-added", "'bird':'Y','sex':'hen','hatched':'2025-05-20'")
                    .given("bird-added", "'bird':'Z','sex':'hen','hatched':'2025-05-13'")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'Y'", "Y is 10 months old")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'Z'"),
            rule("a bird of which only the year is known may be too young for a pair")
                    .given("bird-added", "'bird':'Y','sex':'hen','hatched':'2025'")
                    .given("bird-added", "'bird':'Z','sex':'hen','hatched':'2024'")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'Y'", "only the year it hatched")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'Z'"),
            rule("a cockatiel hen is paired up from fifteen months on (456 days: Myhrvold et al. 2015)")
                    .given("bird-added", "'bird':'Y','sex':'hen','hatched':'2025-02-01','species':'cockatiel'")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'Y'", "Y is 14 months old")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014'"),
            rule("a bird that is to be watched is paired up only on purpose")
                    .given("bird-looked-over", "'bird':'HB 24-014','condition':'watch'")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014'", "to be watched since")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014','sure':true"),
            rule("a bird from the hospital cage is paired up only on purpose")
                    .given("cage-use-changed", "'cage':'B1','use':'hospital'")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014'", "in B1, a hospital cage")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014','sure':true"),
            rule("a bird from a cage in which one was reported puffed up is paired up only on purpose")
                    .given("check", "'cage':'B1','answer':'different','how':'hand','signs':['puffed-up'],'by':'Tomas'")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014'", "uffed up")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014','sure':true"),
            rule("a hen that has not left her last pair is paired up again only on purpose")
                    .given("bird-moved", "'bird':'HB 24-011','to':'B1'")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-012'", "is paired in A1")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014'"),
            rule("an egg laid within a week of pairing may be of another cock (7 to 10 days: a breeder's pages in Canada)")
                    .given("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014','on':'2026-04-07'")
                    .refuses("egg-laid", "'cage':'A2','on':'2026-04-13'", "of another cock")
                    .takes("egg-laid", "'cage':'A2','on':'2026-04-14'"),
            rule("an egg shows nothing before its fourth day of sitting (veins after 3 to 4 days: a breeder's pages)")
                    .given("egg-laid", "'cage':'A1','on':'2026-04-08'")
                    .given("egg-laid", "'cage':'A1','on':'2026-04-10'")
                    .refuses(
                            "egg-candled",
                            "'cage':'A1','mark':'2','finding':'clear','on':'2026-04-13'",
                            "too early to tell: a good egg looks so too in its first days. Look again from 14 April")
                    .takes("egg-candled", "'cage':'A1','mark':'2','finding':'clear','on':'2026-04-14'"),
            rule("a hen whose cock went the day before has not rested")
                    .given("bird-moved", "'bird':'HB 24-011','to':'B1','on':'2026-04-07'")
                    .refuses("bird-moved", "'bird':'HB 24-012','to':'B1','on':'2026-04-08'", "has not rested yet")
                    .takes("bird-moved", "'bird':'HB 24-012','to':'B1','on':'2026-04-14'"),
            rule("a cock stays while chicks do not feed themselves (6 to 7 weeks: Clinical Avian Medicine)")
                    .given("egg-laid", "'cage':'A1','on':'2026-03-14'")
                    .given("chick-hatched", "'cage':'A1','mark':'1','on':'2026-04-02'")
                    .refuses("bird-moved", "'bird':'HB 24-011','to':'B1'", "still feeds 1 chick in A1")
                    .takes("bird-moved", "'bird':'HB 24-011','to':'B1','sure':true"),
            rule("parent and young are a pair only on purpose")
                    .given("bird-added", "'bird':'Y','sex':'hen','father':'HB 24-013'")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'Y'", "parent and young")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-011','hen':'Y','sure':true"),
            rule("young of one mother are a pair only on purpose")
                    .given("bird-added", "'bird':'Y','sex':'hen','mother':'HB 24-014'")
                    .given("bird-added", "'bird':'X','sex':'cock','mother':'HB 24-014'")
                    .refuses("paired-up", "'cage':'A2','cock':'X','hen':'Y'", "a parent in common")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'Y'"),
            rule("one answer passes over no other question")
                    .given("bird-added", "'bird':'Y','sex':'hen','father':'HB 24-013','hatched':'2025-08-01'")
                    .refuses(
                            "paired-up",
                            "'cage':'A2','cock':'HB 24-013','hen':'Y'",
                            "Pair it up all the same? Also: HB 24-013 and Y are parent and young.")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014'"),
            rule("an egg hatches no sooner than its days of sitting allow (a breeder's pages: never under 17)")
                    .given("egg-laid", "'cage':'A1','on':'2026-03-10'")
                    .given("egg-laid", "'cage':'A1','on':'2026-03-12'")
                    .refuses("chick-hatched", "'cage':'A1','mark':'1','on':'2026-03-25'", "before 29 March 2026")
                    .takes("chick-hatched", "'cage':'A1','mark':'1','on':'2026-03-29'"),
            rule("neither does the one due next, that nobody named")
                    .given("egg-laid", "'cage':'A1','on':'2026-03-10'")
                    .given("egg-laid", "'cage':'A1','on':'2026-03-12'")
                    .refuses("chick-hatched", "'cage':'A1','on':'2026-03-28'", "before 29 March 2026")
                    .takes("chick-hatched", "'cage':'A1','on':'2026-03-29'"),
            rule("a young bird is not put among grown ones in passing")
                    .given("bird-added", "'bird':'Y','sex':'unknown','hatched':'2026-03-01','cage':'A2'")
                    .given("bird-moved", "'bird':'HB 24-013','to':'A3'")
                    .refuses("bird-moved", "'bird':'Y','to':'A3'", "grown birds (HB 24-013)")
                    .takes("bird-moved", "'bird':'HB 24-014','to':'A3'"),
            rule("a flight kept for hens is of grown birds, though nobody knows them one by one")
                    .given("bird-added", "'bird':'Y','sex':'unknown','hatched':'2026-03-01','cage':'A2'")
                    .given(
                            "cage-added",
                            "'cage':'B3','wall':'North wall','row':2,'column':3,'use':'flight','keeps':'hens'")
                    .given("birds-added", "'cage':'B3','count':5")
                    .refuses("bird-moved", "'bird':'Y','to':'B3'", "the birds in B3 are grown")
                    .takes("bird-moved", "'bird':'Y','to':'A3'"),
            rule("pairing up outside a breeding cage is odd")
                    .refuses("paired-up", "'cage':'B2','cock':'HB 24-013','hen':'HB 24-014'", "not a breeding cage")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014'"),
            rule("taking a bird from its mate is odd")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-011','hen':'HB 24-014'", "paired in A1")
                    .takes("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014'"),
            rule("a third bird with a pair is odd")
                    .refuses("bird-moved", "'bird':'HB 24-013','to':'A1'", "to join them")
                    .takes("bird-moved", "'bird':'HB 24-013','to':'A2'"),
            rule("a new bird with a pair is odd")
                    .refuses("bird-added", "'bird':'X','sex':'hen','cage':'A1'", "to join them")
                    .takes("bird-added", "'bird':'X','sex':'hen','cage':'A2'"),
            rule("others beside a new pair are odd")
                    .given("bird-moved", "'bird':'HB 26-015','to':'A2'")
                    .refuses("paired-up", "'cage':'A2','cock':'HB 24-013','hen':'HB 24-014'", "also holds HB 26-015")
                    .takes("paired-up", "'cage':'A3','cock':'HB 24-013','hen':'HB 24-014'"),
            rule("a second box on a cage is odd")
                    .refuses("box-on", "'cage':'A1'", "already hangs")
                    .takes("box-on", "'cage':'A2'"),
            rule("turning a box that does not hang is odd")
                    .refuses("box-turned", "'cage':'A2'", "no nest box")
                    .takes("box-turned", "'cage':'A1'"),
            rule("a box turned on eggs is odd")
                    .given("egg-laid", "'cage':'A1'")
                    .refuses("box-turned", "'cage':'A1'", "1 egg")
                    .takes("check", "'cage':'A1','answer':'well','how':'hand'"),
            rule("an egg without a pair is odd")
                    .refuses("egg-laid", "'cage':'B1'", "has no pair")
                    .takes("egg-laid", "'cage':'A1'"),
            rule("a third egg in two days is odd")
                    .given("egg-laid", "'cage':'A1','on':'2026-04-13'")
                    .given("egg-laid", "'cage':'A1','on':'2026-04-14'")
                    .refuses("egg-laid", "'cage':'A1','on':'2026-04-14'", "third egg in two days")
                    .takes("egg-laid", "'cage':'A1','on':'2026-04-11'"),
            rule("of a hen that lays each morning the third egg of one day is odd, an egg between two days is none")
                    .given("room-set", "'species':'canary'")
                    .given("egg-laid", "'cage':'A1','on':'2026-04-12'")
                    .given("egg-laid", "'cage':'A1','on':'2026-04-14'")
                    .given("egg-laid", "'cage':'A1','on':'2026-04-12','sure':true")
                    .refuses("egg-laid", "'cage':'A1','on':'2026-04-12'", "third egg in one day")
                    .takes("egg-laid", "'cage':'A1','on':'2026-04-13'"),
            rule("a second egg of one day is odd")
                    .given("egg-laid", "'cage':'A1','on':'2026-04-13'")
                    .refuses("egg-laid", "'cage':'A1','on':'2026-04-13'", "already written down")
                    .takes("egg-laid", "'cage':'A1','on':'2026-04-14'"),
            rule("an egg laid on the floor is odd")
                    .refuses("egg-laid", "'cage':'A1','place':'floor'", "Phone the vet now")
                    .takes("egg-laid", "'cage':'A1','place':'box'"),
            rule("an egg after a long gap is perhaps of a new round")
                    .given("egg-laid", "'cage':'A1','on':'2026-04-04'")
                    .refuses("egg-laid", "'cage':'A1','on':'2026-04-14'", "same round")
                    .takes("egg-laid", "'cage':'A1','on':'2026-04-13'"),
            rule("treating a laying hen is odd")
                    .given("egg-laid", "'cage':'A1','on':'2026-04-10'")
                    .refuses("bird-treated", "'bird':'HB 24-012','product':'spot-on','reason':'yearly'", "laying hen")
                    .takes("bird-treated", "'bird':'HB 24-011','product':'spot-on','reason':'yearly'"),
            rule("planning days away that are over is odd")
                    .refuses("away-planned", "'from':'2026-04-01','to':'2026-04-13','sitter':'Tomas'", "over on")
                    .takes("away-planned", "'from':'2026-04-01','to':'2026-04-14','sitter':'Tomas'"),
            rule("days away that were planned late are not over on their day")
                    .refuses("away-planned", "'from':'2026-04-01','to':'2026-04-02','sitter':'Tomas'", "over on")
                    .takes("away-planned", "'from':'2026-04-01','to':'2026-04-02','sitter':'Tomas','on':'2026-04-02'"),
            rule("changing days away that are over is odd")
                    .given("away-planned", "'from':'2026-04-01','to':'2026-04-12','sitter':'Tomas','on':'2026-04-01'")
                    .refuses("away-changed", "'sitter':'Joan'", "over on")
                    .takes("away-changed", "'to':'2026-04-16'"),
            rule("a product past its date is odd")
                    .refuses(
                            "bird-treated",
                            "'bird':'HB 24-011','product':'P','reason':'yearly','expiry':'2026-04-13'",
                            "past its date")
                    .takes("bird-treated", "'bird':'HB 24-011','product':'P','reason':'yearly','expiry':'2026-04-14'"));

    private Optional<Room> furnished = Optional.empty();

    @TestFactory
    Stream<DynamicTest> whatCannotBeIsRefusedWithAReason() {
        return REFUSED.stream()
                .map(each -> dynamicTest(
                        each.rule(),
                        () -> inAFurnishedRoom(each, () -> {
                            assertThat(refusal(each.odd())).contains(each.said());
                            assertThatNothingWasRecordedBy(each);
                        })));
    }

    @TestFactory
    Stream<DynamicTest> whatIsOddIsAskedAndTakenWhenItIsSure() {
        return ASKED.stream()
                .map(each -> dynamicTest(
                        each.rule(),
                        () -> inAFurnishedRoom(each, () -> {
                            assertThat(question(each.odd()))
                                    .contains(each.said())
                                    .endsWith("?");
                            assertThatNothingWasRecordedBy(each);
                            Recording sure = recorded(line(each.odd()).beingSure());
                            assertThat(sure).as(said(sure)).isInstanceOf(Recording.Done.class);
                            strike(room().head());
                        })));
    }

    private void inAFurnishedRoom(Example each, Runnable then) {
        if (!furnished.filter(room -> sameBut(room, room())).isPresent()) {
            moveIntoAFurnishedRoom();
            furnished = Optional.of(room());
        }
        tell(each.given());
        then.run();
        tell(each.fine());
        strikeAllSince(furnished.orElseThrow().head());
    }

    /** Whether the rooms differ in nothing but how many entries there are: else a new one is moved into, which takes time. */
    private static boolean sameBut(Room one, Room other) {
        return new Room(
                        other.head(),
                        one.code(),
                        one.day(),
                        one.since(),
                        one.settings(),
                        one.walls(),
                        one.cages(),
                        one.birds(),
                        one.pairs(),
                        one.plans(),
                        one.people(),
                        one.absences(),
                        one.visits(),
                        one.unread(),
                        one.outcomes(),
                        one.calls(),
                        one.rings(),
                        one.ringsSpoilt(),
                        one.ringsWorn(),
                        one.past())
                .equals(other);
    }

    private void strikeAllSince(long head) {
        for (long number = room().head(); number > head; number--) {
            LogEntry entry = entry(number);
            if (!entry.isStruck() && !entry.deed().equals("struck-out")) {
                strike(number);
            }
        }
    }

    private void assertThatNothingWasRecordedBy(Example each) {
        assertThat(roomReadAnew()).as(each.rule()).isEqualTo(room());
        assertThat(store().<Optional<Long>>read(Store.Reading::firstBroken)).isEmpty();
    }

    private void strike(long number) {
        tell("{\"deed\":\"struck-out\",\"entry\":" + number + ",\"why\":\"to go on\",\"by\":\"Ines\"}");
    }

    private static Writing rule(String words) {
        return new Writing(words, "", "", "");
    }

    /** An example in the making. */
    private record Writing(String rule, String before, String odd, String said) {

        Writing given(String deed, String fields) {
            return new Writing(rule, before + written(deed, fields) + "\n", odd, said);
        }

        Writing refuses(String deed, String fields, String words) {
            return new Writing(rule, before, written(deed, fields), words);
        }

        Example takes(String deed, String fields) {
            return new Example(rule, before, odd, said, written(deed, fields));
        }

        private static String written(String deed, String fields) {
            String by = fields.contains("'by':") ? "" : ",'by':'Ines'";
            return ("{'deed':'" + deed + "'," + fields + by + "}").replace('\'', '"');
        }
    }
}
