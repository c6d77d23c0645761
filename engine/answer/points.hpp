#pragma once
// The hold points: what is asked at each the day before, and what the answer says to it.
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "answer/next_readings.hpp"
#include "job/trouble.hpp"

namespace stringcourse {

struct Answer;

enum class Answered : std::uint8_t { Yes, No, CannotTell, NotRead };

/// One question of a hold point.
struct Question {
  std::string_view asks;  // its name, which is its sentence's: "ask-whole-units"
  Answered answered = Answered::NotRead;
  Fact says;            // the number that says so
  std::string place;    // JSON pointer to what answers it in the job, or ""
  std::string drawing;  // the drawing that shows it, or ""
  Fact chosen = {};     // the remedy that was chosen because it is not yes, if nothing read since says otherwise
};

/// One thing that a hold point still lacks.
struct Lack {
  Fact says;
  std::string place;  // JSON pointer into the job, or "" for the whole
};

struct PointAsAsked {
  HoldPoint hold_point = HoldPoint::Order;
  std::vector<Question> questions;
  std::vector<Lack> lacks;           // those that no question says
  std::vector<NextReading> to_read;  // the next one first
  bool done = false;                 // every question is answered yes, or a remedy is chosen for it
  bool stands = false;               // the job stands here: the first that is not done
};

/// All six, in order.
[[nodiscard]] std::vector<PointAsAsked> points_as_asked(const Answer& answer);
/// What the job does not say yet and a hold point asks.
[[nodiscard]] std::vector<Lack> lacks_of(const Answer& answer, HoldPoint point);

}  // namespace stringcourse
