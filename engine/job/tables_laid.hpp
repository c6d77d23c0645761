#pragma once
// Field tables of the laid log: what happened at the wall.
#include <array>
#include <string_view>
#include <tuple>

#include "job/field_table.hpp"
#include "job/laid.hpp"
#include "job/tables_units.hpp"

namespace stringcourse {

template <>
struct Table<Laying> {
  static constexpr std::string_view name = "laying";
  static constexpr std::string_view description = "How the wall is laid and judged.";
  static constexpr auto fields = std::tuple{
      field("rules", &Laying::rules, Need::Optional,
            "Whose limits a wall is judged by; absent: us with an inch tape, uk with millimetres."),
      field("joint_least", &Laying::joint_least, Need::Optional,
            "Narrowest head joint that a correction may ask for, a length; absent: 1/4 in or 7 mm."),
      field("joint_most", &Laying::joint_most, Need::Optional,
            "Widest head joint that a correction may ask for, a length; absent: 1/2 in or 13 mm."),
      field("beyond_working", &Laying::beyond_working, Need::Optional,
            "True when corrections may leave that range, never the tolerance of 1/8 to 3/4 in."),
      field("mark_reading", &Laying::mark_reading, Need::Optional,
            "How far a block end may be read wrong at a mark, either way, a length; absent: 1/32 in or 1 mm."),
      field("unit_spread", &Laying::unit_spread, Need::Optional,
            "Standard deviation of one unit's length, a length; absent: 1/24 in, unverified."),
      field("joint_spread", &Laying::joint_spread, Need::Optional,
            "Standard deviation of one joint's width, a length; absent: 1/16 in, unverified."),
  };
};

template <>
struct Table<MarkReading> {
  static constexpr std::string_view name = "mark_reading";
  static constexpr std::string_view description = "The far end of a block at its mark: exactly one of past and read.";
  static constexpr std::array<std::string_view, 2> exactly_one{"past", "read"};
  static constexpr auto fields = std::tuple{
      field("on", &MarkReading::on, Need::Required, "The wall.", kNameText),
      field("course", &MarkReading::course, Need::Required, "The course.", kCourseNumber),
      field("at", &MarkReading::at, Need::Required, "The mark: its running distance from the wall's start, a length."),
      field("past", &MarkReading::past, Need::Optional,
            "How far the block's end is past the mark, a length, minus short of it.", kAnySign),
      field("read", &MarkReading::read, Need::Optional, "What the tape reads at the block's end, a length."),
  };
};

template <>
struct Table<UnitSample> {
  static constexpr std::string_view name = "unit_sample";
  static constexpr std::string_view description =
      "Units of the batch, measured: together in a dry, tight row, or one by one.";
  static constexpr auto fields = std::tuple{
      field("together", &UnitSample::together, Need::Optional, "How many lie in the row.", {.least = 1, .most = 1'000}),
      field("row", &UnitSample::row, Need::Optional, "The row's length, a length."),
      field("singles", &UnitSample::singles, Need::Optional, "Units one by one, lengths.", {.most_entries = 1'000}),
  };
};

template <>
struct Table<CourseLaid> {
  static constexpr std::string_view name = "course_laid";
  static constexpr std::string_view description = "A course of a wall laid from end to end.";
  static constexpr auto fields = std::tuple{
      field("on", &CourseLaid::on, Need::Required, "The wall.", kNameText),
      field("course", &CourseLaid::course, Need::Required, "The course.", kCourseNumber),
  };
};

template <>
struct Table<GaugeReading> {
  static constexpr std::string_view name = "gauge_reading";
  static constexpr std::string_view description = "The top of a course against the gauge rod (story pole).";
  static constexpr auto fields = std::tuple{
      field("on", &GaugeReading::on, Need::Required, "The wall.", kNameText),
      field("course", &GaugeReading::course, Need::Required, "The course.", kCourseNumber),
      field("high", &GaugeReading::high, Need::Required, "How far its top is above its mark, a length, minus below it.",
            kAnySign),
  };
};

template <>
struct Table<UnitSetting> {
  static constexpr std::string_view name = "unit_setting";
  static constexpr std::string_view description =
      "One unit set, read at its four corners against the line's height; near is the end already met.";
  static constexpr auto fields = std::tuple{
      field("on", &UnitSetting::on, Need::Required, "The wall.", kNameText),
      field("course", &UnitSetting::course, Need::Required, "The course.", kCourseNumber),
      field("near_outer", &UnitSetting::near_outer, Need::Required,
            "Outer corner at the near end: over, a length, minus under.", kAnySign),
      field("near_inner", &UnitSetting::near_inner, Need::Required,
            "Inner corner at the near end: over, a length, minus under.", kAnySign),
      field("far_outer", &UnitSetting::far_outer, Need::Required,
            "Outer corner at the far end: over, a length, minus under.", kAnySign),
      field("far_inner", &UnitSetting::far_inner, Need::Required,
            "Inner corner at the far end: over, a length, minus under.", kAnySign),
      field("bed", &UnitSetting::bed, Need::Required, "The bed at its thinnest, as the unit lies, a length.",
            kZeroOrMore),
      field("line_gap", &UnitSetting::line_gap, Need::Optional, "The gap between its face and the line, a length.",
            kZeroOrMore),
  };
};

template <>
struct Table<GapReading> {
  static constexpr std::string_view name = "gap_reading";
  static constexpr std::string_view description = "The gap that a closure has to fill.";
  static constexpr auto fields = std::tuple{
      field("on", &GapReading::on, Need::Required, "The wall.", kNameText),
      field("course", &GapReading::course, Need::Required, "The course.", kCourseNumber),
      field("at", &GapReading::at, Need::Required, "The mark at the gap's near side: its running distance, a length.",
            kZeroOrMore),
      field("measured", &GapReading::measured, Need::Required, "The gap between the two units that stand, a length."),
  };
};

template <>
struct Table<WallCheck> {
  static constexpr std::string_view name = "wall_check";
  static constexpr std::string_view description = "A finished part of a wall checked, or a joint measured.";
  static constexpr auto fields = std::tuple{
      field("on", &WallCheck::on, Need::Required, "The wall.", kNameText),
      field("course", &WallCheck::course, Need::Required, "The course.", kCourseNumber),
      field("what", &WallCheck::what, Need::Required, "What was checked."),
      field("over", &WallCheck::over, Need::Optional, "The length or height that it was read over; not for joints."),
      field("off", &WallCheck::off, Need::Required, "The deviation, or a joint's width, a length, minus the other way.",
            kAnySign),
      field("may_be_wrong", &WallCheck::may_be_wrong, Need::Optional,
            "How far the instrument may be wrong, either way, a length; absent: as a mark is read.", kZeroOrMore),
  };
};

template <>
struct Table<FoundPlace> {
  static constexpr std::string_view name = "found_place";
  static constexpr std::string_view description =
      "A jamb or a wall's far corner as it was found to stand: fixed from now on, and the rest is solved again.";
  static constexpr auto fields = std::tuple{
      field("on", &FoundPlace::on, Need::Required, "The wall.", kNameText),
      field("what", &FoundPlace::what, Need::Required, "Which face was found."),
      field("opening", &FoundPlace::opening, Need::Optional, "The opening whose jamb it is.", kNameText),
      field("at", &FoundPlace::at, Need::Required, "Its running distance from the wall's start, a length, actual."),
  };
};

template <>
struct Table<Remark> {
  static constexpr std::string_view name = "remark";
  static constexpr std::string_view description = "The course that the entry's note or photos tell of.";
  static constexpr auto fields = std::tuple{
      field("on", &Remark::on, Need::Required, "The wall.", kNameText),
      field("course", &Remark::course, Need::Required, "The course.", kCourseNumber),
  };
};

template <>
struct Table<Grouted> {
  static constexpr std::string_view name = "grouted";
  static constexpr std::string_view description =
      "A cell, or the trough of a beam or a lintel, filled with grout to the top of a course, or consolidated again.";
  static constexpr auto fields = std::tuple{
      field("on", &Grouted::on, Need::Required, "The wall.", kNameText),
      field("course", &Grouted::course, Need::Required,
            "Up to its top: of a cell the last course of the lift, of a trough its own.", kCourseNumber),
      field("at", &Grouted::at, Need::Required,
            "Its place as the pour card lists it: a bar's centre or a trough's start, from the wall's start, a length.",
            kZeroOrMore),
      field("work", &Grouted::work, Need::Required, "What was done."),
  };
};

template <>
struct Table<LookedAt> {
  static constexpr std::string_view name = "looked_at";
  static constexpr std::string_view description = "A line of the inspection list, looked at and right.";
  static constexpr auto fields = std::tuple{
      field("what", &LookedAt::what, Need::Required, "What was looked at."),
      field("on", &LookedAt::on, Need::Required, "The wall.", kNameText),
      field("course", &LookedAt::course, Need::Required, "Its course; of bars and cleanouts the pour's lowest.",
            kCourseNumber),
      field("at", &LookedAt::at, Need::Required,
            "Its place as the list has it, from the wall's start, a length: a bar's centre, or where a beam or a "
            "lintel starts.",
            kZeroOrMore),
  };
};

template <>
struct Table<LaidEntry> {
  static constexpr std::string_view name = "laid_entry";
  static constexpr std::string_view description =
      "One entry of the laid log: exactly one of mark, units, laid, gauge, set, gap, check, found, remark, grouted, "
      "looked_at, strike.";
  static constexpr std::array<std::string_view, 12> exactly_one{
      "mark", "units", "laid", "gauge", "set", "gap", "check", "found", "remark", "grouted", "looked_at", "strike"};
  static constexpr auto fields = std::tuple{
      field("id", &LaidEntry::id, Need::Required, "A name that no other entry has.", kNameText),
      field("when", &LaidEntry::when, Need::Optional, "When, as text; 2026-05-09 14:20 tells the pace too."),
      field("by", &LaidEntry::by, Need::Optional, "Who, as initials."),
      field("mark", &LaidEntry::mark, Need::Optional, "A block end at its mark."),
      field("units", &LaidEntry::units, Need::Optional, "Units of the batch, measured."),
      field("laid", &LaidEntry::laid, Need::Optional, "A course laid from end to end."),
      field("gauge", &LaidEntry::gauge, Need::Optional, "The top of a course against the gauge rod (story pole)."),
      field("set", &LaidEntry::set, Need::Optional, "One unit set, read at its corners."),
      field("gap", &LaidEntry::gap, Need::Optional, "The gap for a closure."),
      field("check", &LaidEntry::check, Need::Optional, "A finished part of a wall or a joint checked."),
      field("found", &LaidEntry::found, Need::Optional, "A jamb or corner as found."),
      field("remark", &LaidEntry::remark, Need::Optional, "What its note or photos tell of."),
      field("grouted", &LaidEntry::grouted, Need::Optional, "A cell or trough filled, or consolidated again."),
      field("looked_at", &LaidEntry::looked_at, Need::Optional, "A line of the inspection list, right."),
      field("strike", &LaidEntry::strike, Need::Optional,
            "The id of an entry that no longer counts. If that is a strike, what it struck counts again.", kNameText),
      field("photos", &LaidEntry::photos, Need::Optional, "Names of photo files.",
            {.text = TextRule::Name, .most_entries = 100}),
      field("note", &LaidEntry::note, Need::Optional, "A note.", {.text = TextRule::Lines, .longest_text = 4'000}),
  };
};

}  // namespace stringcourse
