#include "cli/files.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <utility>

#include "cli/beside.hpp"
#include "cli/signals.hpp"
#include "job/read.hpp"

namespace stringcourse::cli {

namespace {

constexpr std::size_t kGather = 1 << 16;

// Writes all bytes; 0, or the errno of what went wrong.
int write_all(int descriptor, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
    if (written < 0 && errno == EINTR) continue;
    if (written < 0) return errno;
    bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

FileResult<ReadText> read_descriptor(int descriptor, const std::string& path) {
  ReadText read;
  char buffer[kGather];
  while (read.text.size() <= kLargestDocument) {
    const std::size_t room = kLargestDocument + 1 - read.text.size();
    const ssize_t count = ::read(descriptor, buffer, room < sizeof buffer ? room : sizeof buffer);
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return std::unexpected(error_of("cannot read", path));
    if (count == 0) break;
    read.text.append(buffer, static_cast<std::size_t>(count));
  }
  read.too_large = read.text.size() > kLargestDocument;
  return read;
}

// So that no file of somebody else's is taken for an older job.
bool holds_a_job(const std::string& path) {
  const auto text = read_job_text(path);
  return text && !text->too_large && read_job(text->text).has_value();
}

}  // namespace

FileError error_of(std::string_view doing, std::string_view path) {
  const int number = errno;
  std::string text(doing);
  return {text.append(" ").append(path).append(": ").append(std::strerror(number))};
}

FileResult<ReadText> read_job_text(const std::string& path) {
  if (path == "-") return read_descriptor(STDIN_FILENO, "stdin");
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (descriptor < 0) return std::unexpected(error_of("cannot read", path));
  auto read = read_descriptor(descriptor, path);
  ::close(descriptor);
  return read;
}

NewFile::NewFile(std::string path, int descriptor) : path_(std::move(path)), descriptor_(descriptor) {}

NewFile::NewFile(NewFile&& other) noexcept
    : path_(std::move(other.path_)),
      gathered_(std::move(other.gathered_)),
      descriptor_(std::exchange(other.descriptor_, -1)),
      failure_(other.failure_) {}

NewFile::~NewFile() {
  if (descriptor_ >= 0) ::close(descriptor_);
}

FileResult<NewFile> NewFile::create(const std::string& path) {
  const int descriptor = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0666);
  if (descriptor < 0) return std::unexpected(error_of("cannot write", path));
  return NewFile(path, descriptor);
}

bool NewFile::flush() {
  if (failure_ == 0) failure_ = stop_asked() ? EINTR : write_all(descriptor_, gathered_);
  gathered_.clear();
  return failure_ == 0;
}

bool NewFile::write(std::string_view bytes) {
  gathered_.append(bytes);
  return gathered_.size() < kGather ? failure_ == 0 : flush();
}

FileResult<void> NewFile::finish() {
  if (flush() && ::fsync(descriptor_) != 0) failure_ = errno;
  if (::close(std::exchange(descriptor_, -1)) != 0 && failure_ == 0) failure_ = errno;
  errno = failure_;
  if (failure_ != 0) return std::unexpected(error_of("cannot write", path_));
  return {};
}

FileResult<void> write_whole_file(const std::string& path, std::string_view text) {
  struct stat status;
  if (::lstat(path.c_str(), &status) == 0) return errno = EEXIST, std::unexpected(error_of("cannot write", path));
  auto hidden = Beside::file_for(path);
  if (!hidden) return std::unexpected(hidden.error());
  errno = write_all(hidden->descriptor(), text);
  if (errno != 0 || ::fsync(hidden->descriptor()) != 0) return std::unexpected(error_of("cannot write", path));
  const FolderLock lock(folder_of(path));
  if (!move_to_free_name(hidden->path(), path)) return std::unexpected(error_of("cannot write", path));
  hidden->moved();
  sync_folder(folder_of(path));
  return {};
}

FileResult<void> replace_file(const std::string& path, std::string_view text) {
  const std::string previous = path + ".previous";
  struct stat status;
  if (::lstat(path.c_str(), &status) != 0 || !S_ISREG(status.st_mode))
    return errno = errno == 0 ? EINVAL : errno, std::unexpected(error_of("cannot write over", path));
  if (::lstat(previous.c_str(), &status) == 0 && !holds_a_job(previous))
    return errno = EEXIST, std::unexpected(error_of("cannot keep the old file as", previous));
  auto hidden = Beside::file_for(path);
  if (!hidden) return std::unexpected(hidden.error());
  errno = write_all(hidden->descriptor(), text);
  if (errno != 0 || ::fsync(hidden->descriptor()) != 0) return std::unexpected(error_of("cannot write", path));
  const FolderLock lock(folder_of(path));
  // The old file has both names before the new one takes its place: at no moment is there none.
  ::unlink(previous.c_str());
  if (::link(path.c_str(), previous.c_str()) != 0)
    return std::unexpected(error_of("cannot keep the old file as", previous));
  if (::rename(hidden->path().c_str(), path.c_str()) != 0) return std::unexpected(error_of("cannot write", path));
  hidden->moved();
  sync_folder(folder_of(path));
  return {};
}

bool write_stdout(std::string_view bytes) { return write_all(STDOUT_FILENO, bytes) == 0; }

void say(std::string_view text) { write_all(STDERR_FILENO, text); }

}  // namespace stringcourse::cli
