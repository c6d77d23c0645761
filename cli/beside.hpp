#pragma once
// Hidden files and folders beside the place that they are written for. What is written stands there until it is whole
// and is then moved; what a killed run left behind is known by a lock that nobody holds, and taken away by the next
// run.
#include <string>
#include <string_view>

#include "cli/files.hpp"

namespace stringcourse::cli {

/// Held, no other run moves, makes or clears anything of ours in the folder: they wait. Where the file system knows no
/// locks, or the user has asked to stop, nobody waits.
class FolderLock {
 public:
  explicit FolderLock(const std::string& folder);
  FolderLock(const FolderLock&) = delete;
  FolderLock& operator=(const FolderLock&) = delete;
  ~FolderLock();

 private:
  int descriptor_ = -1;
};

/// A hidden file or folder that this run writes. Locked, so that other runs know that somebody lives in it.
class Beside {
 public:
  /// An empty file, or an empty folder, in the folder of `place`. Takes away what killed runs left there.
  [[nodiscard]] static FileResult<Beside> file_for(const std::string& place);
  [[nodiscard]] static FileResult<Beside> folder_for(const std::string& place);
  Beside(Beside&& other) noexcept;
  Beside& operator=(Beside&&) = delete;
  /// Takes away what now stands under the hidden name, but nothing that `plan` does not write.
  ~Beside();

  [[nodiscard]] const std::string& path() const { return path_; }
  /// Of a file: where its bytes go.
  [[nodiscard]] int descriptor() const { return descriptor_; }
  /// It has its name now: nothing is taken away.
  void moved() { path_.clear(); }

 private:
  Beside(std::string path, int descriptor) : path_(std::move(path)), descriptor_(descriptor) {}
  std::string path_;
  int descriptor_ = -1;
};

/// Whether `plan` writes files of this name: "answer.json", "set-a4.pdf", "set-pour-a4.pdf",
/// "drawings/plan-course-1.svg", or makes the folder.
[[nodiscard]] bool is_name_in_set(std::string_view name);

/// "a/b" of "a/b/c", "." of "c".
[[nodiscard]] std::string folder_of(const std::string& place);
/// What the folder says of its names is on the disk; not an error where the file system can't.
void sync_folder(const std::string& path);
/// Gives a file or folder a name that is free. False and errno where something has the name.
[[nodiscard]] bool move_to_free_name(const std::string& from, const std::string& to);

}  // namespace stringcourse::cli
