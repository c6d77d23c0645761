#include "room/hard_shapes.hpp"

#include <cstdlib>
#include <utility>

#include "job/read.hpp"

namespace stringcourse::room_test {
namespace {

/// A job document from its parts, read as any other.
Job job_of(const std::string& units, const std::string& outline, int courses, const std::string& more = "") {
  std::string text = R"({"stringcourse": 1, "tape": "inches", "units": )" + units + R"(, "outline": )" + outline;
  text += R"(, "heights": {"courses": )" + std::to_string(courses) + "}" + (more.empty() ? "" : ", " + more) + "}";
  auto job = read_job(text);
  if (!job) std::abort();
  return *std::move(job);
}

const std::string kUs8 = R"({"series": "us-8"})";

std::string cuts(const std::string& list) { return R"({"series": "us-8", "cuts": [)" + list + "]}"; }

std::string side(const std::string& from, const std::string& to, const std::string& length, const std::string& turn) {
  return R"({"from": ")" + from + R"(", "to": ")" + to + R"(", "length": ")" + length + R"(", "turn": ")" + turn +
         "\"}";
}

std::string rectangle(const std::string& length, const std::string& width) {
  return R"({"closed": true, "sides": [)" + side("A", "B", length, "right") + ", " + side("B", "C", width, "right") +
         ", " + side("C", "D", length, "right") + ", " + side("D", "A", width, "right") + "]}";
}

/// An open wall that winds inward, each second side a unit shorter.
std::string spiral(int sides, int feet) {
  std::string text = R"({"closed": false, "sides": [)";
  for (int k = 0; k < sides; ++k) {
    const std::string length = std::to_string(feet - 8 * (k / 2)) + " ft";
    text += (k > 0 ? ", " : "") + side("p" + std::to_string(k), "p" + std::to_string(k + 1), length, "right");
  }
  return text + "]}";
}

/// `count` inner walls across a building, 8 ft apart.
std::string inner_walls(int count, const std::string& junction) {
  std::string text = R"("interior_walls": [)";
  for (int k = 0; k < count; ++k) {
    text += (k > 0 ? ", " : "") + std::string(R"({"name": "w)") + std::to_string(k) +
            R"(", "off": "AB", "place": {"from": "A", "at": ")" + std::to_string(8 * (k + 1)) +
            R"( ft"}, "start_junction": ")" + junction + R"(", "end_junction": ")" + junction + "\"}";
  }
  return text + "]";
}

std::string openings(int count, const std::string& width, const std::string& lintel) {
  std::string text = R"("openings": [)";
  for (int k = 0; k < count; ++k) {
    text += (k > 0 ? ", " : "") + std::string(R"({"name": "O)") + std::to_string(k) +
            R"(", "on": "AB", "place": {"from": "A", "at": ")" + std::to_string(6 * k + 3) +
            R"( ft"}, "masonry": {"width": ")" + width + R"(", "height": "48\""}, "sill_course": 4)" + lintel + "}";
  }
  return text + "]";
}

const std::string kNoJoints = R"("control_joints": {"rule": "none"})";

std::string own_series(const std::string& sizes) {
  return R"({"series": "mine", "own_series": [{"id": "mine", )" + sizes + "}]}";
}

/// Metric units whose half is no round part of anything: 441 and 219 with joints of 3 mm.
const std::string kOddMetric =
    own_series(R"("full": "441 mm", "half": "219 mm", "thickness": "219 mm", "height": "200 mm", "joint": "3 mm")");
const std::string kOddInches = own_series(
    R"("full": "10 6/64\"", "half": "4 55/64\"", "thickness": "4 55/64\"", "height": "5 55/64\"", "joint": "24/64\"",
  "least_piece": "1 46/64\"", "joint_tolerance": "1/64\"")");
const std::string kOddLegs = own_series(
    R"("full": "15 40/64\"", "half": "7 36/64\"", "thickness": "7 36/64\"", "height": "9 55/64\"", "joint": "32/64\"",
  "cut_step": "10/64\"", "corner_leg": "15 15/64\"")");

}  // namespace

std::vector<HardShape> hard_shapes() {
  return {
      {"two odd cuts",
       job_of(cuts(R"("4 17/64\"", "4 56/64\"")"), rectangle("80\\\" actual", "222 45/64\\\" actual"), 2)},
      {"three cuts", job_of(cuts(R"("4 1/4\"", "4 7/8\"", "7 7/8\"")"), rectangle("24'-5\\\"", "18'-7\\\""), 12)},
      {"odd cuts on long walls",
       job_of(cuts(R"("4 17/64\"", "5 3/64\"", "9 11/64\"")"), rectangle("180 ft 5 in", "90 ft 7 in"), 12, kNoJoints)},
      {"100 tied inner walls", job_of(kUs8, rectangle("808 ft", "24 ft"), 12, inner_walls(100, "tied"))},
      {"40 lapped inner walls",
       job_of(kUs8, rectangle("328 ft", "24 ft"), 12, inner_walls(40, "lapped") + ", " + kNoJoints)},
      {"200 m", job_of(kUs8, rectangle("200 m", "8 ft"), 3, kNoJoints)},
      {"1,000 m, 200 courses",
       job_of(kUs8, rectangle("3280'-3 5/64\\\" actual", "8'-3 11/64\\\" actual"), 200, kNoJoints)},
      {"a spiral of 200 sides", job_of(kUs8, spiral(200, 800), 14)},
      {"40 openings", job_of(kUs8, rectangle("250 ft", "24 ft"), 14, openings(40, R"(32\")", "") + ", " + kNoJoints)},
      {"40 one-piece lintels",
       job_of(kUs8, rectangle("250 ft", "24 ft"), 14,
              openings(40, R"(32\")", R"(, "lintel": {"make": "one-piece", "courses": 1, "bearing": "8\""})") + ", " +
                  kNoJoints)},
      {"odd metric units", job_of(kOddMetric, rectangle("24117 mm", "13901 mm"), 12)},
      {"odd inch units", job_of(kOddInches, rectangle("128\\\"", "276 15/64\\\""), 14, kNoJoints)},
      {"odd corner legs", job_of(kOddLegs, rectangle("327 54/64\\\"", "344\\\""), 12)},
      {"nothing fits", job_of(kUs8, rectangle("30\\\"", "30\\\""), 3)},
  };
}

}  // namespace stringcourse::room_test
