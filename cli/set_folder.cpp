#include "cli/set_folder.hpp"

#include <fcntl.h>
#include <stdlib.h>
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
  if (!stands(previous)) return {};
  const auto names = is_plain_folder(previous) ? listed_names(previous) : std::nullopt;
  if (!names) return std::unexpected(refusal(previous, "it was not made by 'plan'. Move it away."));
  const auto foreign = foreign_file(previous, *names);
  if (!foreign) return std::unexpected(foreign.error());
  if (!foreign->empty()) return std::unexpected(refusal(previous, *foreign + " in it was not written by 'plan'. Move it away."));
  return {};
}

void sync_folder(const std::string& path) {
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (descriptor < 0) return;
  ::fsync(descriptor);
  ::close(descriptor);
}

bool unsupported() { return errno == EINVAL || errno == ENOSYS; }

// Moves a folder to a name that is free. File systems without that promise refuse only a folder that is not empty.
bool move_to_free_name(const std::string& from, const std::string& to) {
  if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return true;
  return unsupported() && ::rename(from.c_str(), to.c_str()) == 0;
}

// Two folders change names: in one step, or in three where the file system can't.
bool change_places(const std::string& one, const std::string& other) {
  if (::renameat2(AT_FDCWD, one.c_str(), AT_FDCWD, other.c_str(), RENAME_EXCHANGE) == 0) return true;
  const std::string between = one + ".between";
  return unsupported() && ::rename(other.c_str(), between.c_str()) == 0 && ::rename(one.c_str(), other.c_str()) == 0 &&
         ::rename(between.c_str(), one.c_str()) == 0;
}

std::string parent_of(const std::string& place) {
  const std::string parent = fs::path(place).parent_path().string();
  return parent.empty() ? "." : parent;
}

std::string without_last_slashes(std::string place) {
  while (place.size() > 1 && place.back() == '/') place.pop_back();
  return place;
}

std::string previous_of(const std::string& place) { return place + ".previous"; }

}  // namespace

SetFolder::SetFolder(std::string place, std::string beside) : place_(std::move(place)), beside_(std::move(beside)) {}

SetFolder::SetFolder(SetFolder&& other) noexcept
    : place_(std::move(other.place_)),
      beside_(std::exchange(other.beside_, std::string())),
      names_(std::move(other.names_)),
      drawings_made_(other.drawings_made_) {}

SetFolder::~SetFolder() {
  std::error_code code;
  if (!beside_.empty()) fs::remove_all(beside_, code);
}

FileResult<void> SetFolder::check(const std::string& asked) {
  const std::string place = without_last_slashes(asked);
  const auto checked = check_place(place);
  return checked && stands(place) ? check_previous(previous_of(place)) : checked;
}

FileResult<SetFolder> SetFolder::begin(const std::string& asked) {
  const std::string place = without_last_slashes(asked);
  if (const auto checked = check(place); !checked) return std::unexpected(checked.error());
  std::string beside = parent_of(place) + "/.stringcourse-writing-XXXXXX";
  if (::mkdtemp(beside.data()) == nullptr) return std::unexpected(error_of("cannot make a folder for", place));
  const mode_t mask = ::umask(0);
  ::umask(mask);
  ::chmod(beside.c_str(), 0777 & ~mask);
  return SetFolder(place, beside);
}

FileResult<NewFile> SetFolder::create(const std::string& name) {
  if (name.starts_with(kDrawings) && !std::exchange(drawings_made_, true)) {
    const std::string folder = beside_ + "/" + std::string(kDrawings);
    if (::mkdir(folder.c_str(), 0777) != 0) return std::unexpected(error_of("cannot make", folder));
  }
  auto file = NewFile::create(beside_ + "/" + name);
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
  sync_folder(beside_ + "/" + std::string(kDrawings));
  sync_folder(beside_);
  if (const auto moved = move_to_place(); !moved) return moved;
  sync_folder(parent_of(place_));
  return {};
}

// A new place is taken only while nothing stands there; an old set and the new one change places in one step.
FileResult<void> SetFolder::move_to_place() {
  if (const auto checked = check_place(place_); !checked) return checked;
  if (!stands(place_)) {
    if (!move_to_free_name(beside_, place_)) return std::unexpected(error_of("cannot write", place_));
    beside_.clear();
    return {};
  }
  if (const auto checked = check_previous(previous_of(place_)); !checked) return checked;
  if (!change_places(beside_, place_)) return std::unexpected(error_of("cannot write", place_));
  return keep_as_previous();
}

// `beside_` now holds the old set. The one before it goes, the old one takes its name.
FileResult<void> SetFolder::keep_as_previous() {
  const std::string previous = previous_of(place_);
  std::error_code code;
  if (stands(previous)) {
    if (const auto checked = check_previous(previous); !checked) return checked;
    fs::remove_all(previous, code);
  }
  if (!move_to_free_name(beside_, previous)) {
    const FileError error = error_of("the new set is written, but the old one could not be kept as", previous);
    beside_.clear();
    return std::unexpected(error);
  }
  beside_.clear();
  return {};
}

std::string safe_file_name(std::string_view text) {
  std::string name;
  for (const char c : text.substr(0, 80)) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_' || c == '.';
    name += plain ? c : '-';
  }
  if (name.empty() || name[0] == '.') name.insert(0, "x");
  return name;
}

}  // namespace stringcourse::cli
