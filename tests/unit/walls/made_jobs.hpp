#pragma once
// Small jobs for the tests of walls, built in plain C++.
#include <initializer_list>
#include <string>
#include <string_view>

#include "told.hpp"
#include "walls/resolve.hpp"

namespace stringcourse::tests {

inline Length in(std::int64_t inches) { return Length::inches(inches); }
inline Length in16(std::int64_t inches, std::int64_t sixteenths) { return in(inches) + Length::sixteenths(sixteenths); }
inline StatedLength nominal(Length length) { return {length, Basis::Nominal}; }
inline StatedLength actual(Length length) { return {length, Basis::Actual}; }

struct Leg {
  std::int64_t inches;
  Turn turn = Turn::Right;
};

/// Corners are A, B, C, ...; sides AB, BC, ...
inline Outline outline_of(std::initializer_list<Leg> legs, bool closed = true) {
  Outline outline;
  outline.closed = closed;
  char corner = 'A';
  for (const Leg& leg : legs) {
    const bool last = outline.sides.size() + 1 == legs.size();
    const char next = last && closed ? 'A' : static_cast<char>(corner + 1);
    Side side;
    side.from = std::string(1, corner);
    side.to = std::string(1, next);
    side.length = nominal(in(leg.inches));
    if (!last || closed) side.turn = leg.turn;
    outline.sides.push_back(side);
    corner = next;
  }
  return outline;
}

inline Job job_with(Outline outline, int courses = 12) {
  Job job;
  job.name = "shed";
  job.units.series = "us-8";
  job.outline = std::move(outline);
  job.heights.courses = courses;
  return job;
}

/// 24 x 20 ft, 12 courses of 8 in block.
inline Job shed() { return job_with(outline_of({{288}, {240}, {288}, {240}})); }

inline Place at(std::string from, Length place, std::optional<Face> to = std::nullopt) {
  return {std::move(from), nominal(place), to};
}

inline Opening plain_hole(std::string name, std::string on, Place place, Length width, Length height) {
  Opening opening;
  opening.name = std::move(name);
  opening.on = std::move(on);
  opening.place = std::move(place);
  opening.masonry = MasonrySize{nominal(width), nominal(height)};
  return opening;
}

inline Opening window_hole(std::string name, std::string on, Place place, Length width, Length height,
                           int sill_course) {
  Opening opening = plain_hole(std::move(name), std::move(on), std::move(place), width, height);
  opening.sill_course = sill_course;
  return opening;
}

inline InteriorWall inner_wall(std::string name, std::string off, Place place) {
  InteriorWall wall;
  wall.name = std::move(name);
  wall.off = std::move(off);
  wall.place = std::move(place);
  return wall;
}

inline std::string codes(const Refusals& refusals) {
  std::string all;
  for (const Refusal& refusal : refusals.shown)
    all += std::string(refusal.code) + " " + refusal.place + ": " + test::told(refusal.reason, refusals.tape) + " | " +
           test::told(refusal.remedy, refusals.tape) + "\n";
  return all;
}

inline const Finding* finding(const Building& building, Code code) {
  for (const Finding& found : building.findings)
    if (found.code == code) return &found;
  return nullptr;
}

inline const Refusal* refusal(const Refusals& refusals, Code code) {
  for (const Refusal& refused : refusals.shown)
    if (refused.code == code) return &refused;
  return nullptr;
}

}  // namespace stringcourse::tests

// The building of a job that must resolve, and the refusals of one that must not.
#define RESOLVED(name, job)                                       \
  const auto name##_or = stringcourse::resolve(job);              \
  ASSERT_TRUE(name##_or.has_value()) << codes(name##_or.error()); \
  const stringcourse::Building& name = *name##_or
#define REFUSED(name, job)                           \
  const auto name##_or = stringcourse::resolve(job); \
  ASSERT_FALSE(name##_or.has_value());               \
  const stringcourse::Refusals& name = name##_or.error()
