// What a sound JSON document can have wrong with it, all of it told at once.
#include <string>

#include "gtest/gtest.h"
#include "job/read.hpp"
#include "told.hpp"
#include "unit/job/support.hpp"

namespace stringcourse::test {
namespace {

/// "code place" of each refusal of the small job with one text in it exchanged.
std::string refused(std::string_view from, std::string_view to) {
  const Refusals refusals = refusals_of(replaced(kSmallJob, from, to));
  EXPECT_TRUE(is_well_said(refusals));
  return codes_and_places(refusals);
}

Refusal first_refused(std::string_view from, std::string_view to) {
  const Refusals refusals = refusals_of(replaced(kSmallJob, from, to));
  return refusals.shown.empty() ? Refusal{"not-json", {}, {}, {}} : refusals.shown.front();
}

std::string repeated(std::string_view entry, int times) {
  std::string list = "[" + std::string(entry);
  for (int k = 1; k < times; ++k) list += "," + std::string(entry);
  return list + "]";
}

TEST(Refusals, TheSmallJobIsAccepted) { EXPECT_TRUE(read_job(kSmallJob).has_value()); }

TEST(Refusals, EveryErrorIsToldAtOnceInTheOrderOfTheFields) {
  const Refusals refusals = refusals_of(R"({
    "stringcourse": 1, "name": 7, "tape": "inch",
    "units": {"series": "us-8", "stockd": []},
    "outline": {"closed": "yes", "sides": [{"from": "A", "to": "", "length": 28, "turn": "rigth"}, 5]},
    "heights": {},
    "openings": [{"name": "D1", "on": "AB", "place": {"from": "A", "at": "four feet"},
                  "masonry": {"width": "-3\"", "height": "7'-4\""}, "window": null}]})");
  EXPECT_TRUE(is_well_said(refusals));
  EXPECT_EQ(codes_and_places(refusals),
            "wrong-type /name\n"
            "unknown-name /tape\n"
            "unknown-field /units/stockd\n"
            "wrong-type /outline/closed\n"
            "empty-text /outline/sides/0/to\n"
            "wrong-type /outline/sides/0/length\n"
            "unknown-name /outline/sides/0/turn\n"
            "wrong-type /outline/sides/1\n"
            "choose-one /heights\n"
            "not-a-length /openings/0/place/at\n"
            "out-of-range /openings/0/masonry/width\n"
            "wrong-type /openings/0/window\n"
            "choose-one /openings/0\n");
}

TEST(Refusals, ABareNumberForALengthIsToldHowToBeWritten) {
  const Refusal inches = first_refused("\"28'-0\\\"\"", "28");
  EXPECT_EQ(inches.code, Code("wrong-type"));
  EXPECT_EQ(test::told(inches.remedy), "Write a length as a text: \"24'-0\\\"\".");
  const Refusals metric =
      refusals_of(replaced(replaced(kSmallJob, "\"28'-0\\\"\"", "8534.4"), "inches", "millimetres"));
  EXPECT_EQ(test::told(metric.shown.front().remedy, Tape::Millimetres), "Write a length as a text: \"7315 mm\".");
}

TEST(Refusals, TheTapeCountsWhereverItStands) {
  // A number without a unit: 8 inches or 8 millimetres. The tape stands last here.
  const auto with_tape = [](std::string_view tape) {
    return read_job(R"({"heights": {"height": "8"}, "outline": {"sides": []}, "units": {"series": "us-8"},
                        "stringcourse": 1, "tape": ")" +
                    std::string(tape) + "\"}");
  };
  EXPECT_EQ(with_tape("inches").value().heights.height->length, Length::inches(8));
  EXPECT_EQ(with_tape("millimetres").value().heights.height->length, Length::millimetres(8));
}

TEST(Refusals, ActualIsReadAfterALengthAndOnlyThere) {
  const auto side = [](std::string_view length) { return read_job(replaced(kSmallJob, "28'-0\\\"", length)); };
  EXPECT_EQ(side("28'-0\\\" actual").value().outline.sides[0].length, (StatedLength{Length::feet(28), Basis::Actual}));
  EXPECT_EQ(side("8534 mm  actual ").value().outline.sides[0].length,
            (StatedLength{Length::millimetres(8534), Basis::Actual}));
  for (const char* bad : {"actual", " actual", "28'-0\\\"actual", "28'-0\\\" actual actual", "actual 28'"}) {
    const auto job = side(bad);
    ASSERT_FALSE(job.has_value()) << bad;
    EXPECT_EQ(codes_and_places(job.error()), "not-a-length /outline/sides/0/length\n") << bad;
  }
  // Sizes that are always actual take no word.
  const std::string cut = replaced(kSmallJob, "\"us-8\"", "\"us-8\", \"least_piece\": \"4\\\" actual\"");
  EXPECT_EQ(codes_and_places(refusals_of(cut)), "not-a-length /units/least_piece\n");
}

TEST(Refusals, AnUnknownFieldIsGivenTheNearestKnownName) {
  EXPECT_EQ(test::told(first_refused("\"openings\"", "\"openngs\"").remedy),
            "Did you mean \"openings\"? Otherwise take it out.");
  EXPECT_EQ(test::told(first_refused("\"masonry\": {", "\"mansory\": 0, \"masonry\": {").remedy),
            "Did you mean \"masonry\"? Otherwise take it out.");
  const Refusal far_off = first_refused("\"heights\"", "\"colour\": 0, \"heights\"");
  EXPECT_EQ(far_off.place, "/colour");
  EXPECT_NE(test::told(far_off.remedy).find("openings"), std::string::npos);  // the list of those that there are
}

TEST(Refusals, AMistypedChoiceIsGivenTheNearestName) {
  const Refusal refusal = first_refused("\"us-8\"", "\"us-8\", \"stocked\": [\"full\", \"lintl\"]");
  EXPECT_EQ(refusal.code, Code("unknown-name"));
  EXPECT_EQ(refusal.place, "/units/stocked/1");
  EXPECT_EQ(test::told(refusal.remedy), "Did you mean \"lintel\"?");
}

TEST(Refusals, ADoubledFieldIsRefusedOnceWhereItStands) {
  EXPECT_EQ(refused("\"tape\"", "\"name\": \"Other\", \"name\": \"Third\", \"tape\""), "duplicate-field /name\n");
  EXPECT_EQ(refused("\"width\"", "\"width\": \"1'\", \"width\""), "duplicate-field /openings/0/masonry/width\n");
  // An escape writes the same key in another way: "n\u0061me" is "name".
  EXPECT_EQ(refused("\"tape\"", "\"n\\u0061me\": \"Other\", \"tape\""), "duplicate-field /name\n");
}

TEST(Refusals, PlacesAreEscapedAsJsonPointersAre) {
  EXPECT_EQ(refused("\"tape\"", "\"a/b~c\": 1, \"tape\""), "unknown-field /a~1b~0c\n");
}

TEST(Refusals, AHostileValueIsQuotedClippedAndHarmless) {
  const Refusal turned = first_refused("12}", "\"\\u202Eleft\\u0007\"}");
  EXPECT_NE(test::told(turned.reason).find("\\u202Eleft\\u0007"), std::string::npos) << test::told(turned.reason);
  const Refusal longer = first_refused("12}", "\"" + std::string(5'000, 'x') + "\"}");
  EXPECT_LT(test::told(longer.reason).size(), 200U);
}

TEST(Refusals, AMissingFieldIsNamedWithWhatItIsFor) {
  EXPECT_EQ(refused("\"tape\": \"inches\",", ""), "missing-field /tape\n");
  EXPECT_EQ(refused("\"stringcourse\": 1, ", ""), "missing-field /stringcourse\n");
  EXPECT_EQ(codes_and_places(refusals_of("{}")),
            "missing-field /stringcourse\nmissing-field /tape\nmissing-field /units\nmissing-field /outline\n"
            "missing-field /heights\n");
}

TEST(Refusals, ANewerVersionIsRefusedAloneAndSaysWhich) {
  const Refusals refusals = refusals_of(R"({"stringcourse": 7, "storeys": []})");
  EXPECT_EQ(codes_and_places(refusals), "newer-version /stringcourse\n");
  EXPECT_NE(test::told(refusals.shown.front().reason).find("version 7"), std::string::npos);
  EXPECT_EQ(refused("\"stringcourse\": 1", "\"stringcourse\": 0"), "out-of-range /stringcourse\n");
  EXPECT_EQ(refused("\"stringcourse\": 1", "\"stringcourse\": \"1\""), "wrong-type /stringcourse\n");
}

TEST(Refusals, ExactlyOneSizeForAnOpening) {
  EXPECT_EQ(refused("\"masonry\": {", "\"window\": {\"width\": \"3'\", \"height\": \"3'\"}, \"masonry\": {"),
            "choose-one /openings/0\n");
  EXPECT_EQ(refused(",\n                \"masonry\": {\"width\": \"3'-4\\\"\", \"height\": \"7'-4\\\"\"}", ""),
            "choose-one /openings/0\n");
  EXPECT_EQ(refused("\"masonry\": {", "\"sill\": \"3'\", \"sill_course\": 4, \"masonry\": {"),
            "choose-one /openings/0\n");
}

TEST(Refusals, EitherCoursesOrAHeight) {
  EXPECT_EQ(refused("{\"courses\": 12}", "{\"courses\": 12, \"height\": \"8'\"}"), "choose-one /heights\n");
  EXPECT_EQ(refused("{\"courses\": 12}", "{\"half_high\": \"top\"}"), "choose-one /heights\n");
}

TEST(Refusals, CoursesAreWholeNumbersFromOneToTwoHundred) {
  EXPECT_TRUE(read_job(replaced(kSmallJob, "12}", "200}")).has_value());
  EXPECT_EQ(refused("12}", "201}"), "out-of-range /heights/courses\n");
  EXPECT_EQ(refused("12}", "0}"), "out-of-range /heights/courses\n");
  EXPECT_EQ(refused("12}", "12.0}"), "wrong-type /heights/courses\n");
  EXPECT_EQ(refused("12}", "18446744073709551615}"), "wrong-type /heights/courses\n");
  EXPECT_EQ(refused("12}", "-9223372036854775808}"), "out-of-range /heights/courses\n");
}

TEST(Refusals, LengthsAreAboveZeroWhereTheyMustBeAndAtMostTenKilometres) {
  EXPECT_TRUE(read_job(replaced(kSmallJob, "28'-0\\\"", "10000 m")).has_value());
  EXPECT_EQ(refused("28'-0\\\"", "10000001 mm"), "not-a-length /outline/sides/0/length\n");
  EXPECT_EQ(refused("28'-0\\\"", "0"), "out-of-range /outline/sides/0/length\n");
  EXPECT_TRUE(
      read_job(replaced(kSmallJob, "4'-0\\\"", "0\\\"")).has_value());  // an opening at a corner: for walls/ to judge
  EXPECT_EQ(refused("4'-0\\\"", "-1\\\""), "out-of-range /openings/0/place/at\n");
  EXPECT_TRUE(read_job(replaced(kSmallJob, "\"masonry\": {", "\"sill\": \"-8\\\"\", \"masonry\": {")).has_value());
}

TEST(Refusals, NamesStandOnOneLineAndNotesMayHaveSeveral) {
  EXPECT_EQ(refused("Shed", "Sh\\ned"), "control-character /name\n");
  EXPECT_EQ(refused("Shed", "Sh\\u0000ed"), "control-character /name\n");
  EXPECT_EQ(refused("Shed", "Sh\\u0085ed"), "control-character /name\n");
  EXPECT_TRUE(read_job(replaced(kSmallJob, "\"tape\"", "\"notes\": \"a\\r\\n\\tb\", \"tape\"")).has_value());
  EXPECT_EQ(refused("\"tape\"", "\"notes\": \"a\\u0007b\", \"tape\""), "control-character /notes\n");
}

TEST(Refusals, TextsAreCountedInCharactersNotBytes) {
  std::string bricks;
  for (int k = 0; k < 200; ++k) bricks += "\U0001F9F1";
  EXPECT_TRUE(read_job(replaced(kSmallJob, "Shed", bricks)).has_value());
  EXPECT_EQ(refused("Shed", bricks + "x"), "too-long /name\n");
  EXPECT_EQ(refused("\"tape\"", "\"notes\": \"" + std::string(4'001, 'x') + "\", \"tape\""), "too-long /notes\n");
  EXPECT_EQ(refused("28'-0\\\"", std::string(61, '1')), "too-long /outline/sides/0/length\n");
}

TEST(Refusals, ATooLongListIsRefusedOnceWithItsEntriesUnread) {
  const Refusal refusal =
      first_refused("\"heights\"", "\"interior_walls\": " + repeated("0", 10'001) + ", \"heights\"");
  EXPECT_EQ(refusal.code, Code("too-many"));
  EXPECT_EQ(test::told(refusal.reason), "The list has 10001 entries; at most 10000 are read.");
  EXPECT_EQ(refused("\"heights\"", "\"interior_walls\": " + repeated("0", 10'001) + ", \"heights\""),
            "too-many /interior_walls\n");
}

TEST(Refusals, AHundredAreShownAndTheRestCounted) {
  const Refusals refusals =
      refusals_of(replaced(kSmallJob, "\"heights\"", "\"interior_walls\": " + repeated("0", 350) + ", \"heights\""));
  EXPECT_EQ(refusals.shown.size(), 100U);
  EXPECT_EQ(refusals.beyond, 250U);
}

TEST(Refusals, ListsOfCoursesAndKindsNameEachOnceAndPourTopsRise) {
  const auto steel = [](std::string_view fields) {
    return refused("\"heights\"", "\"steel\": {" + std::string(fields) + "}, \"heights\"");
  };
  EXPECT_EQ(steel("\"bond_beams\": [12, 6, 12]"), "list-order /steel/bond_beams\n");
  EXPECT_EQ(steel("\"pour_tops\": [12, 6]"), "list-order /steel/pour_tops\n");
  EXPECT_EQ(steel("\"pour_tops\": [6, 6]"), "list-order /steel/pour_tops\n");
  EXPECT_EQ(refused("\"us-8\"", "\"us-8\", \"stocked\": [\"full\", \"full\"]"), "list-order /units/stocked\n");
}

TEST(Refusals, TwoThingsWithOneNameAreRefusedAtTheSecond) {
  const std::string side = R"({"from": "A", "to": "B", "length": "28'-0\""})";
  EXPECT_EQ(refused(side, side + R"(, {"name": "x", "from": "A", "to": "C", "length": "8'"})"),
            "name-twice /outline/sides/1/from\n");
  EXPECT_EQ(refused(side, side + R"(, {"name": "x", "from": "B", "to": "B", "length": "8'"})"),
            "name-twice /outline/sides/1/to\n");
  EXPECT_EQ(refused(side, side + R"(, {"name": "AB", "from": "B", "to": "C", "length": "8'"})"),
            "name-twice /outline/sides/1/name\n");
  EXPECT_EQ(
      refused("\"heights\"",
              R"("interior_walls": [{"name": "AB", "off": "AB", "place": {"from": "A", "at": "9'"}}], "heights")"),
      "name-twice /interior_walls/0/name\n");
  const std::string door =
      R"(, {"name": "D1", "on": "AB", "place": {"from": "A", "at": "20'"}, "masonry": {"width": "1'", "height": "1'"}}])";
  EXPECT_EQ(refused("}}]", "}}" + door), "name-twice /openings/1/name\n");
}

}  // namespace
}  // namespace stringcourse::test
