#pragma once
// Files in and out. What is read is bounded; what is written is new, whole and on the disk, or is not there at all.
#include <cstddef>
#include <cstdio>
#include <expected>
#include <string>
#include <string_view>

namespace stringcourse::cli {

/// What could not be read or written, and why, in one sentence.
struct FileError {
  std::string text;
};
template <typename T>
using FileResult = std::expected<T, FileError>;

/// What was read. `too_large`: there was more than kLargestDocument; the text then is the beginning only.
struct ReadText {
  std::string text;
  bool too_large = false;
};
/// Reads a file, or stdin for "-", and never more than kLargestDocument + 1 bytes of it.
[[nodiscard]] FileResult<ReadText> read_job_text(const std::string& path);

/// "cannot write x/y: No space left on device", from errno.
[[nodiscard]] FileError error_of(std::string_view doing, std::string_view path);

/// A file that did not exist before. Writes are gathered; the first failure is remembered and told by finish().
class NewFile {
 public:
  /// Fails if anything stands at `path`, a dangling link included.
  [[nodiscard]] static FileResult<NewFile> create(const std::string& path);
  NewFile(NewFile&& other) noexcept;
  NewFile& operator=(NewFile&&) = delete;
  ~NewFile();

  /// False once a write has failed or the user has asked to stop: the caller may give up early.
  bool write(std::string_view bytes);
  /// On the disk, or an error.
  [[nodiscard]] FileResult<void> finish();

 private:
  NewFile(std::string path, int descriptor);
  bool flush();
  std::string path_;
  std::string gathered_;
  int descriptor_ = -1;
  int failure_ = 0;  // errno of the first failed write
};

/// Writes a file where nothing stands yet: whole and on the disk, or not there at all, wherever the run is stopped.
[[nodiscard]] FileResult<void> write_whole_file(const std::string& path, std::string_view text);

/// Writes over a file, whole or not at all; what stood there is kept beside it as `path`.previous. A file of that name
/// that is no earlier job is left alone, and nothing is written.
[[nodiscard]] FileResult<void> replace_file(const std::string& path, std::string_view text);

/// Writes all of `bytes` to stdout. False when the reader has gone or the disk is full.
[[nodiscard]] bool write_stdout(std::string_view bytes);
/// Says something on stderr.
void say(std::string_view text);

}  // namespace stringcourse::cli
