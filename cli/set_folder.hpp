#pragma once
// A set: the folder that `plan` writes. It grows under a hidden name beside its place and is moved there in one step,
// so its place holds the old set or the new one, never a part, wherever a run is killed. Several runs on one place come
// after each other. What `plan` did not write is never touched. Where the file system knows plain renames only, the
// place is empty for a moment, while the old set stands as `.previous`.
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "cli/beside.hpp"
#include "cli/files.hpp"

namespace stringcourse::cli {

/// The file that shows that a folder is a set of ours, and lists what we wrote into it.
inline constexpr std::string_view kMarkerName = "stringcourse-set.json";

class SetFolder {
 public:
  /// Whether a set may go to `place`: refuses one where anything but a set of ours stands, and a set whose `.previous`
  /// is not ours or holds files of someone else. A `.previous` that was being removed when its run was killed is ours.
  [[nodiscard]] static FileResult<void> check(const std::string& place);
  /// Checks `place` and makes the folder beside it; the parent folder must be there.
  [[nodiscard]] static FileResult<SetFolder> begin(const std::string& place);
  /// A new file in the set: "answer.json" or "drawings/plan.svg" (its folder is made).
  [[nodiscard]] FileResult<NewFile> create(const std::string& name);
  /// Writes the marker and moves the set to its place; an older set there becomes `.previous`.
  [[nodiscard]] FileResult<void> finish();
  /// Names of the files made, in the order of making.
  [[nodiscard]] const std::vector<std::string>& names() const { return names_; }

 private:
  SetFolder(std::string place, Beside beside) : place_(std::move(place)), beside_(std::move(beside)) {}
  FileResult<void> write_marker();
  FileResult<void> move_to_place();
  FileResult<void> change_with_old();
  FileResult<void> change_by_plain_renames();
  std::string place_;
  Beside beside_;  // the new set; once it stands at its place, what had to go
  std::vector<std::string> names_;
  bool drawings_made_ = false;
};

/// A file name from any text: letters, digits, '-', '_' and '.' stay, all else becomes '-'; never empty, hidden or
/// long.
[[nodiscard]] std::string safe_file_name(std::string_view text);

}  // namespace stringcourse::cli
