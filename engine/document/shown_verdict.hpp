#pragma once
// Field tables of what an answer judges: findings, offers, cost, proof, what is given up or stopped.
#include "document/shown_building.hpp"

namespace stringcourse::document {

template <>
struct Shown<Finding> {
  static constexpr std::string_view name = "finding";
  static constexpr std::string_view description = "Computed, but a rule is broken or a choice is poor.";
  static constexpr auto fields = std::tuple{
      shown("code", &Finding::code),
      shown("place", &Finding::place, "JSON pointer into the job, or \"\""),
      shown("text", &Finding::says),
      shown("rule", [](const View& view, const Finding& of) { return words::cited(of.rule, view.reader()); }),
      shown("hold_point", &Finding::hold_point),
  };
};

template <>
struct Shown<Offer> {
  static constexpr std::string_view name = "offer";
  static constexpr std::string_view description = "What a small change would save.";
  static constexpr auto fields = std::tuple{
      shown("what", &Offer::what),
      shown("place", &Offer::place),
      shown("name", &Offer::name),
      shown("text", &Offer::text),
      shown(
          "money_least",
          [](const View&, const Offer& of) { return of.money ? std::optional(of.money->least) : std::nullopt; },
          "smallest units of the currency that the order costs more with it; absent: no prices, one is missing, or it "
          "was not reckoned"),
      shown("money_most",
            [](const View&, const Offer& of) { return of.money ? std::optional(of.money->most) : std::nullopt; }),
      shown(
          "change", &Offer::change,
          "openings and their jambs: towards the end of the side is positive; heads: up; sides: longer; widths: wider"),
      shown(
          "shift",
          [](const View&, const Offer& of) {
            return of.what == OfferWhat::ChangeWidth ? std::optional(of.shift) : std::nullopt;
          },
          "change-width: how far the near jamb goes towards the end of the side"),
      shown(
          "conceded_saved",
          [](const View&, const Offer& of) { return of.conceded != 0 ? std::optional(of.conceded) : std::nullopt; },
          "weight of the rules that need not be given up; absent: 0"),
      shown("cuts_saved", &Offer::cuts, "negative: more of them"),
      shown("short_laps_saved", &Offer::short_laps),
      shown("bars_saved", &Offer::bars),
      shown("mends", &Offer::mends,
            "findings, by their place in the list, that it removes; where no offer does, lessens"),
  };
};

template <>
struct Shown<FreePlaces> {
  static constexpr std::string_view name = "free_places";
  static constexpr std::string_view description = "Places of an opening that lay without a cut.";
  static constexpr auto fields = std::tuple{
      opening("opening", &FreePlaces::opening),
      shown(
          "from",
          [](const View&, const FreePlaces& of) {
            std::vector<std::int64_t> from;
            for (const Length place : of.from) from.push_back(place.in_nanometres());
            return from;
          },
          "near jamb from the start of its side, whole nanometres"),
  };
};

template <>
struct Shown<Cost> {
  static constexpr std::string_view name = "cost";
  static constexpr std::string_view description =
      "Terms compared in this order; with quarter bond asked for, cuts and short pieces come before short laps.";
  static constexpr auto fields = std::tuple{
      shown("short_laps", &Cost::short_laps),
      shown("cuts", &Cost::cuts),
      shown("short_pieces", &Cost::short_pieces, "pieces shorter than a half"),
      shown("shifted_joints", &Cost::shifted_joints, "head joints that shift from band to band"),
      shown("extra_bars", &Cost::extra_bars, "bars beyond the least that the spacing needs"),
      shown("joint_deviation_nm", &Cost::joint_deviation, "sum over runs of |run - pieces - joints x joint|"),
      shown("units", &Cost::units),
      shown(
          "conceded",
          [](const View&, const Cost& of) { return of.conceded != 0 ? std::optional(of.conceded) : std::nullopt; },
          "weight of the rules given up, compared before all other terms; absent where every rule is kept"),
  };
};

/// How far the layout is proven.
struct Proof {
  const Layout& layout;
};
template <>
struct Shown<Proof> {
  static constexpr std::string_view name = "proof";
  static constexpr std::string_view description = "How far the layout is proven to be the best.";
  static constexpr auto fields = std::tuple{
      shown(
          "proven", [](const View&, const Proof& of) { return of.layout.proven; }, "the cost is proven least"),
      shown(
          "least_possible", [](const View&, const Proof& of) { return of.layout.least_possible; },
          "no layout costs less; the cost itself where it is proven"),
      shown(
          "cut_lengths", [](const View&, const Proof& of) { return of.layout.cut_lengths; },
          "different lengths among saw cuts"),
      shown("cut_lengths_at_least", [](const View&, const Proof& of) { return of.layout.cut_lengths_at_least; }),
      shown(
          "relaxed_piece", [](const View&, const Proof& of) { return of.layout.relaxed_piece; },
          "a piece shorter than the job's least stands in the wall"),
      shown(
          "relaxed_bearing", [](const View&, const Proof& of) { return of.layout.relaxed_bearing; },
          "a cut that keeps a whole cell stands under a bearing"),
  };
};

template <>
struct Shown<Concession> {
  static constexpr std::string_view name = "concession";
  static constexpr std::string_view description = "A rule given up at one place.";
  static constexpr auto fields = std::tuple{
      shown("what", &Concession::what),
      side("side", &Concession::wall),
      shown("course", &Concession::course,
            "course number, from 1 at the bearing; of two neighbouring courses the upper one"),
      shown("from", &Concession::from),
      shown("to", &Concession::to),
      shown("amount", &Concession::amount),
  };
};

template <>
struct Shown<Stopped> {
  static constexpr std::string_view name = "stop";
  static constexpr std::string_view description = "A stretch that no layout fills.";
  static constexpr auto fields = std::tuple{
      side("side", &Stopped::wall),
      shown("first_course", &Stopped::first_course, kCourseNumber),
      shown("last_course", &Stopped::last_course, kCourseNumber),
      shown("from", &Stopped::start),
      shown("to", &Stopped::end),
      shown("rule", &Stopped::rule, "the rule that stops it"),
      shown("remedy", &Stopped::remedy, "the smallest changes that mend it"),
  };
};

}  // namespace stringcourse::document
