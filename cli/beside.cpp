#include "cli/beside.hpp"

#include <fcntl.h>
#include <stdlib.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <utility>
#include <vector>

#include "cli/set_folder.hpp"
#include "cli/signals.hpp"

namespace stringcourse::cli {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view kHidden = ".stringcourse-writing-";
constexpr std::string_view kInDrawings = "drawings/";

// Paths below a folder, what lies deeper first, as far as they can be read.
std::vector<std::string> names_below(const std::string& folder) {
  std::vector<std::string> names;
  std::error_code code;
  for (fs::recursive_directory_iterator at(folder, code), end; !code && at != end; at.increment(code)) {
    names.push_back(at->path().lexically_relative(folder).string());
  }
  std::ranges::reverse(names);
  return names;
}

// The marker goes last: as long as anything of a set is left, it is known as one.
void remove_ours(const std::string& path) {
  if (::unlink(path.c_str()) == 0) return;
  const std::string marker(kMarkerName);
  for (const std::string& name : names_below(path)) {
    if (name != marker && is_name_in_set(name)) ::remove((path + "/" + name).c_str());
  }
  const std::vector<std::string> left = names_below(path);
  if (left.size() == 1 && left[0] == marker) ::unlink((path + "/" + marker).c_str());
  ::rmdir(path.c_str());
}

// A lock without waiting. False as well where the file system knows no locks: then nothing is known to be left over.
bool takes_lock(int descriptor) { return ::flock(descriptor, LOCK_EX | LOCK_NB) == 0; }

void remove_if_left_over(const std::string& path) {
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
  if (descriptor < 0) return;
  struct stat status;
  const bool mine = ::fstat(descriptor, &status) == 0 && status.st_uid == ::geteuid();
  if (mine && takes_lock(descriptor)) remove_ours(path);
  ::close(descriptor);
}

// Called with the folder's lock held.
void clear_left_over(const std::string& folder) {
  std::vector<std::string> hidden;
  std::error_code code;
  for (fs::directory_iterator at(folder, code), end; !code && at != end; at.increment(code)) {
    if (at->path().filename().string().starts_with(kHidden)) hidden.push_back(at->path().string());
  }
  for (const std::string& path : hidden) remove_if_left_over(path);
}

std::string hidden_name(const std::string& folder) { return folder + "/" + std::string(kHidden) + "XXXXXX"; }

mode_t mask_now() {
  const mode_t mask = ::umask(0);
  ::umask(mask);
  return mask;
}

}  // namespace

FolderLock::FolderLock(const std::string& folder) {
  descriptor_ = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  while (descriptor_ >= 0 && ::flock(descriptor_, LOCK_EX) != 0 && errno == EINTR && !stop_asked()) {}
}

FolderLock::~FolderLock() {
  if (descriptor_ >= 0) ::close(descriptor_);
}

FileResult<Beside> Beside::file_for(const std::string& place) {
  const std::string folder = folder_of(place);
  const FolderLock lock(folder);
  clear_left_over(folder);
  std::string path = hidden_name(folder);
  const int descriptor = ::mkostemp(path.data(), O_CLOEXEC);
  if (descriptor < 0) return std::unexpected(error_of("cannot write", place));
  ::fchmod(descriptor, 0666 & ~mask_now());
  (void)takes_lock(descriptor);
  return Beside(path, descriptor);
}

FileResult<Beside> Beside::folder_for(const std::string& place) {
  const std::string folder = folder_of(place);
  const FolderLock lock(folder);
  clear_left_over(folder);
  std::string path = hidden_name(folder);
  if (::mkdtemp(path.data()) == nullptr) return std::unexpected(error_of("cannot make a folder for", place));
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_DIRECTORY | O_NOFOLLOW | O_CLOEXEC);
  ::chmod(path.c_str(), 0777 & ~mask_now());
  if (descriptor >= 0) (void)takes_lock(descriptor);
  return Beside(path, descriptor);
}

Beside::Beside(Beside&& other) noexcept
    : path_(std::exchange(other.path_, std::string())), descriptor_(std::exchange(other.descriptor_, -1)) {}

Beside::~Beside() {
  if (!path_.empty()) remove_ours(path_);
  if (descriptor_ >= 0) ::close(descriptor_);
}

bool is_name_in_set(std::string_view name) {
  if (name.starts_with(kInDrawings)) {
    const std::string_view drawing = name.substr(kInDrawings.size());
    return drawing.ends_with(".svg") && drawing.find('/') == drawing.npos;
  }
  constexpr std::string_view kNames[] = {"drawings", "answer.json", "job.json", "order.csv", "days.ics", kMarkerName};
  if (std::ranges::find(kNames, name) != std::end(kNames)) return true;
  // "set-letter.pdf", "set-pour-a4.pdf".
  constexpr std::string_view kPapers[] = {"letter.pdf", "a4.pdf"};
  constexpr std::string_view kParts[] = {"", "order-", "pour-", "first-course-", "lintels-", "grout-", "top-"};
  if (!name.starts_with("set-")) return false;
  return std::ranges::any_of(kParts, [&](std::string_view part) {
    return std::ranges::any_of(kPapers, [&](std::string_view paper) {
      return name.substr(4).starts_with(part) && name.substr(4 + part.size()) == paper;
    });
  });
}

std::string folder_of(const std::string& place) {
  const std::string folder = fs::path(place).parent_path().string();
  return folder.empty() ? "." : folder;
}

void sync_folder(const std::string& path) {
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (descriptor < 0) return;
  ::fsync(descriptor);
  ::close(descriptor);
}

// Where the file system knows no such promise: a file's second name is refused if taken, a folder's unless it is empty.
bool move_to_free_name(const std::string& from, const std::string& to) {
  if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return true;
  if (errno != EINVAL && errno != ENOSYS) return false;
  if (fs::is_directory(from)) return ::rename(from.c_str(), to.c_str()) == 0;
  return ::link(from.c_str(), to.c_str()) == 0 && (::unlink(from.c_str()), true);
}

}  // namespace stringcourse::cli
