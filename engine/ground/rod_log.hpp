#pragma once
// The rod readings of a job's log as a net: stations and set-ups by number, in the order in which they first come.
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "ground/as_found.hpp"

namespace stringcourse::ground {

/// Names in the order in which they first come.
class Names {
 public:
  int number(const std::string& name);
  [[nodiscard]] const std::vector<std::string>& all() const { return all_; }
  [[nodiscard]] int count() const { return static_cast<int>(all_.size()); }
  [[nodiscard]] std::optional<int> find(const std::string& name) const;

 private:
  std::map<std::string, int> numbers_;
  std::vector<std::string> all_;
};

struct RodLog {
  Names stations, setups;
  std::vector<RodReading> readings;              // corrected by the two-peg test where they say their sight
  std::vector<std::size_t> entries;              // of Job::readings, by reading
  std::vector<std::optional<WallPlace>> places;  // by station
  std::vector<Surface> surfaces;                 // by station
  std::set<int> two_places;                      // stations that readings give two places
};

/// Every rod reading that counts.
[[nodiscard]] RodLog rod_log(const Job& job, const Building& building, const std::vector<bool>& counts);

/// Keeps what hangs on the datum; the names of the rest.
[[nodiscard]] std::vector<std::string> drop_loose(RodLog& log, int datum);

/// Of the instrument, in metres for each metre of sight, by this test.
[[nodiscard]] double sight_error_of(const TwoPegReading& test);
/// The last two-peg test that counts; sights of one length tell nothing.
[[nodiscard]] std::optional<std::size_t> two_peg_test(const Job& job, const std::vector<bool>& counts);

}  // namespace stringcourse::ground
