#pragma once
// The units that were really delivered: their mean length and spread, and the joint that makes them close; and what
// their errors at the marks teach while they are laid.
#include <cstdint>
#include <optional>
#include <vector>

#include "laying/verdict.hpp"
#include "measure/length.hpp"

namespace stringcourse::laying {

/// Units measured: several laid dry end to end, tight, and read once; or one by one.
struct Sample {
  std::vector<Length> singles;
  int together = 0;  // units in the row laid dry; 0: none
  Length row;        // and its length
};

struct Batch {
  int units = 0;
  Length mean;                   // nearest nanometre
  std::optional<double> spread;  // sample standard deviation, metres; two singles or more
  double doubt = 0;              // standard doubt of the mean, metres: reading, and spread over the number measured
  Verdict within = Verdict::CannotTell;  // each single (or the mean of a row) within +-1/8 in of what is specified
};
/// SOURCE: ASTM C90 (second-hand): +-1/8 in of the specified length. A row and singles are taken together, by number.
/// None without a unit.
[[nodiscard]] std::optional<Batch> batch_of(const Sample& sample, Length specified, Length reading_error);

/// The joint that makes `units` of this mean fill a run with so many joints, to the tape's step; and what is left over
/// when every joint has it. None where it lies outside the range.
struct ClosingJoint {
  Length joint;
  Length left;
};
[[nodiscard]] std::optional<ClosingJoint> closing_joint(Length run, int units, Length mean, int joints, Length step,
                                                        Length least, Length most);

/// What each unit adds to the course's error, learned from mark to mark: a Kalman filter of one constant.
/// Prior: 0 with so much doubt. A bay of k units that took the course from one error to the next says k times the bias,
/// with the variance of k units and joints and of both marks.
struct Bias {
  double mean = 0;      // metres for each unit; above zero: units or joints run long
  double variance = 0;  // metres squared
};
struct Noise {
  double unit_and_joint = 0;  // standard deviation of one unit and its joint, metres
  double mark = 0;            // of one mark read, metres
};
/// Prior doubt of the bias: 1/32 in (ours: a batch that runs 1/32 in long is common).
[[nodiscard]] Bias unknown_bias();
[[nodiscard]] Bias learned(const Bias& before, int units, double error_change, const Noise& noise);
/// Joints made narrower by so much, in whole steps, take the learned bias out over the next `units`; zero while its
/// doubt (1.96 sigma) covers it.
[[nodiscard]] Length corrected_ahead(const Bias& bias, int units, Length step);

}  // namespace stringcourse::laying
