#include "cli/set_folder.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <optional>
#include <utility>

namespace stringcourse::cli {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view kDrawings = "drawings";

FileError refusal(std::string_view path, std::string_view why) {
  return {"will not write over " + std::string(path) + ": " + std::string(why)};
}

// The names listed in a folder's marker; none if the folder is no set of ours.
std::optional<std::vector<std::string>> listed_names(const std::string& folder) {
  const std::string marker = folder + "/" + std::string(kMarkerName);
  std::error_code code;
  if (fs::symlink_status(marker, code).type() != fs::file_type::regular) return std::nullopt;
  const auto read = read_job_text(marker);
  if (!read || read->too_large) return std::nullopt;
  const auto json = nlohmann::json::parse(read->text, nullptr, false);
  if (!json.is_object() || json.value("made_by", nlohmann::json()) != "stringcourse") return std::nullopt;
  const auto files = json.find("files");
  if (files == json.end() || !files->is_array()) return std::nullopt;
  std::vector<std::string> names{std::string(kMarkerName), std::string(kDrawings)};
  for (const auto& name : *files) {
    if (!name.is_string()) return std::nullopt;
    names.push_back(name.get<std::string>());
  }
  return names;
}

// A path in `folder` that its marker does not list; "" if all is ours.
FileResult<std::string> foreign_file(const std::string& folder, const std::vector<std::string>& names) {
  std::error_code code;
  for (fs::recursive_directory_iterator at(folder, code), end; !code && at != end; at.increment(code)) {
    const std::string name = at->path().lexically_relative(folder).string();
    if (std::ranges::find(names, name) == names.end()) return at->path().string();
  }
  if (code) return std::unexpected(FileError{"cannot read " + folder + ": " + code.message()});
  return std::string();
}

bool stands(const std::string& path) {
  struct stat status;
  return ::lstat(path.c_str(), &status) == 0;
}

bool is_plain_folder(const std::string& path) {
  std::error_code code;
  return fs::symlink_status(path, code).type() == fs::file_type::directory;
}

// A set that was being taken away by a run that was killed: it lacks its marker, but holds nothing else than `plan`
// writes.
bool is_torso(const std::string& folder) {
  if (!is_plain_folder(folder) || stands(folder + "/" + std::string(kMarkerName))) return false;
  std::error_code code;
  for (fs::recursive_directory_iterator at(folder, code), end; !code && at != end; at.increment(code)) {
    if (!is_name_in_set(at->path().lexically_relative(folder).string())) return false;
  }
  return !code;
}

FileResult<void> check_place(const std::string& place) {
  const std::string last = fs::path(place).filename().string();
  if (last.empty() || last == "." || last == "..") return std::unexpected(refusal(place, "name a folder of its own."));
  if (!stands(place)) return {};
  if (!is_plain_folder(place) || !listed_names(place)) {
    return std::unexpected(refusal(place, "it was not made by 'plan'. Name another folder or move it away."));
  }
  return {};
}

FileResult<void> check_previous(const std::string& previous) {
  if (!stands(previous) || is_torso(previous)) return {};
  const auto names = is_plain_folder(previous) ? listed_names(previous) : std::nullopt;
  if (!names) return std::unexpected(refusal(previous, "it was not made by 'plan'. Move it away."));
  const auto foreign = foreign_file(previous, *names);
  if (!foreign) return std::unexpected(foreign.error());
  if (!foreign->empty())
    return std::unexpected(refusal(previous, *foreign + " in it was not written by 'plan'. Move it away."));
  return {};
}

std::string without_last_slashes(std::string place) {
  while (place.size() > 1 && place.back() == '/') place.pop_back();
  return place;
}

std::string previous_of(const std::string& place) { return place + ".previous"; }

FileResult<void> check_place_and_previous(const std::string& place) {
  const auto checked = check_place(place);
  return checked && stands(place) ? check_previous(previous_of(place)) : checked;
}

// Two folders change names in one step.
bool change_names(const std::string& one, const std::string& other) {
  return ::renameat2(AT_FDCWD, one.c_str(), AT_FDCWD, other.c_str(), RENAME_EXCHANGE) == 0;
}
bool exchanging_is_unknown() { return errno == EINVAL || errno == ENOSYS; }

}  // namespace

FileResult<void> SetFolder::check(const std::string& asked) {
  const std::string place = without_last_slashes(asked);
  const FolderLock lock(folder_of(place));
  return check_place_and_previous(place);
}

FileResult<SetFolder> SetFolder::begin(const std::string& asked) {
  const std::string place = without_last_slashes(asked);
  if (const auto checked = check(place); !checked) return std::unexpected(checked.error());
  auto beside = Beside::folder_for(place);
  if (!beside) return std::unexpected(beside.error());
  return SetFolder(place, *std::move(beside));
}

FileResult<NewFile> SetFolder::create(const std::string& name) {
  if (name.starts_with(kDrawings) && !std::exchange(drawings_made_, true)) {
    const std::string folder = beside_.path() + "/" + std::string(kDrawings);
    if (::mkdir(folder.c_str(), 0777) != 0) return std::unexpected(error_of("cannot make", folder));
  }
  auto file = NewFile::create(beside_.path() + "/" + name);
  if (file) names_.push_back(name);
  return file;
}

FileResult<void> SetFolder::write_marker() {
  nlohmann::json marker = {{"made_by", "stringcourse"}, {"files", names_}};
  auto file = create(std::string(kMarkerName));
  if (!file) return std::unexpected(file.error());
  file->write(marker.dump(1, ' ', false, nlohmann::json::error_handler_t::replace) + "\n");
  return file->finish();
}

FileResult<void> SetFolder::finish() {
  if (const auto written = write_marker(); !written) return written;
  sync_folder(beside_.path() + "/" + std::string(kDrawings));
  sync_folder(beside_.path());
  const FolderLock lock(folder_of(place_));
  if (const auto moved = move_to_place(); !moved) return moved;
  sync_folder(folder_of(place_));
  return {};
}

// A new place is taken only while nothing stands there.
FileResult<void> SetFolder::move_to_place() {
  if (const auto checked = check_place_and_previous(place_); !checked) return checked;
  if (stands(place_)) return change_with_old();
  if (!move_to_free_name(beside_.path(), place_)) return std::unexpected(error_of("cannot write", place_));
  beside_.moved();
  return {};
}

// The new set goes to .previous first and changes names with the old one there: at every moment both are whole, and
// what stays under the hidden name is the set before the old one.
FileResult<void> SetFolder::change_with_old() {
  const std::string previous = previous_of(place_);
  const bool had_previous = stands(previous);
  if (had_previous ? change_names(beside_.path(), previous) : move_to_free_name(beside_.path(), previous)) {
    if (change_names(previous, place_)) return {};
    const int why = errno;
    (void)(had_previous ? change_names(beside_.path(), previous)
                        : ::rename(previous.c_str(), beside_.path().c_str()) == 0);
    errno = why;
  }
  if (!exchanging_is_unknown()) return std::unexpected(error_of("cannot write", place_));
  return change_by_plain_renames();
}

// Each name is free when something moves to it. A step that fails undoes the ones before it.
FileResult<void> SetFolder::change_by_plain_renames() {
  const std::string previous = previous_of(place_), hidden = beside_.path(), before = hidden + "-before";
  const auto moved = [](const std::string& from, const std::string& to) {
    return ::rename(from.c_str(), to.c_str()) == 0;
  };
  const auto failed = [&] { return std::unexpected(error_of("cannot write", place_)); };
  const bool had_previous = stands(previous);
  if (had_previous && !moved(previous, before)) return failed();
  if (!moved(place_, previous)) {
    const auto error = failed();
    if (had_previous) (void)moved(before, previous);
    return error;
  }
  if (!moved(hidden, place_)) {
    const auto error = failed();
    (void)(moved(previous, place_) && had_previous && moved(before, previous));
    return error;
  }
  if (!had_previous || !moved(before, hidden)) beside_.moved();
  return {};
}

std::string safe_file_name(std::string_view text) {
  std::string name;
  for (const char c : text.substr(0, 80)) {
    const bool plain =
        (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_' || c == '.';
    name += plain ? c : '-';
  }
  if (name.empty() || name[0] == '.') name.insert(0, "x");
  return name;
}

}  // namespace stringcourse::cli
