#pragma once
// The slow, obvious twin of the bond solver: every row of a tiny panel is written down, every combination is priced.
// Exact integers and fractions only; shares bond/panel.hpp with the solver and no code. Rules: docs/bond-model.md.
#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "bond/panel.hpp"

namespace stringcourse::oracle {

/// numerator / denominator nanometres; denominator > 0. Need not be reduced.
struct Fraction {
  std::int64_t numerator = 0;
  std::int64_t denominator = 1;
};
/// Sign of a - b, by cross-multiplication in 128 bits.
int compare(Fraction a, Fraction b);
/// Sign of |a - b| - limit, exactly.
int compare_distance(Fraction a, Fraction b, std::int64_t limit);

/// A head joint's centre. `lintel` >= 0 marks the joint at one end of that one-piece lintel: such joints of two rows
/// are not compared when both stand at the same end of the same lintel.
struct HeadJoint {
  Fraction centre;
  std::int32_t lintel = -1;
  bool after_lintel = false;  // the joint at the lintel's far end: its run starts there
};

/// The clear interval that a bar stands in.
struct CellPlace {
  Fraction from, to;
};

/// One run, filled. joints = m, slack = S: every joint is S / m wide.
struct FilledRun {
  std::vector<bond::Chosen> pieces;
  std::int64_t joints = 0;
  std::int64_t slack = 0;
};

/// One row, filled: its lawful runs, its head joints from left to right (tied ones left out), the cell of each bar
/// (none: no run of the row covers that bar), and what one course of it costs.
struct FilledRow {
  std::vector<FilledRun> runs;
  std::vector<HeadJoint> joints;
  std::vector<std::optional<CellPlace>> cells;
  Cost cost;
  std::int64_t weight = 0;
};

/// Every lawful filling of one run by itself (ends, joints, make-up, cuts; not bars or zones). Which end of a cut is
/// the saw's is told apart only if the panel has bars. nullopt: more than `limit`, or 5 times as many begun.
std::optional<std::vector<FilledRun>> all_runs(const bond::Panel& panel, const bond::Row& row, std::size_t run,
                                               std::size_t limit);

/// Every lawful filling of one row, bars and uncut zones included. nullopt: more than `limit`, or too many on the way.
std::optional<std::vector<FilledRow>> all_rows(const bond::Panel& panel, const bond::Row& row, std::size_t limit);

/// Whether the rows may lie one upon the other (rule 3, and bars' common openings), and the short laps between them.
/// nullopt: they may not.
std::optional<std::int64_t> short_laps_between(const bond::Panel& panel, const FilledRow& a, const FilledRow& b);

/// Head joints of `lower` that stand strictly inside a run of `upper_row` with no joint of `upper` within match_within.
std::int64_t shifted_joints(const bond::Panel& panel, const FilledRow& lower, const bond::Row& upper_row,
                            const FilledRow& upper);

struct BruteAnswer {
  bool lawful = false;   // false: no lawful layout exists
  Cost cost;             // least (weighted panels: the sum of weights, in short_laps)
  std::size_t rows = 0;  // rows written down in all
};

/// The least cost of the panel. nullopt: some row has more than `limit` fillings; nothing is claimed.
std::optional<BruteAnswer> brute_force(const bond::Panel& panel, std::size_t limit);

/// The cost of a given layout, re-derived; or the sentence that says which rule it breaks.
struct Judged {
  std::string broken;  // empty: lawful
  Cost cost;
};
Judged judge(const bond::Panel& panel, const std::vector<std::vector<std::vector<bond::Chosen>>>& rows);

/// The panel's cost terms in the order in which it compares them.
std::array<std::int64_t, 6> in_order(const bond::Panel& panel, const Cost& cost);

/// For messages: every term by its name.
std::string say(const Cost& cost);

}  // namespace stringcourse::oracle
