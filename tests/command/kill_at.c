// Preloaded by killed.sh: kills the process just before its change number KILL_AT of the file system, counted from 1.
// Calls the system itself, so that no C library's wrapper counts twice.
#define _GNU_SOURCE
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdarg.h>
#include <stdlib.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

static void count_change(void) {
  static long left = -1;
  if (left < 0) {
    const char* const asked = getenv("KILL_AT");
    left = asked == NULL ? 0 : atol(asked);
  }
  if (left > 0 && --left == 0) kill(getpid(), SIGKILL);
}

static int opened(int folder, const char* path, int flags, mode_t mode) {
  if (flags & O_CREAT) count_change();
  return (int)syscall(SYS_openat, folder, path, flags, mode);
}

int open(const char* path, int flags, ...) {
  va_list rest;
  va_start(rest, flags);
  const mode_t mode = flags & O_CREAT ? (mode_t)va_arg(rest, int) : 0;
  va_end(rest);
  return opened(AT_FDCWD, path, flags, mode);
}

ssize_t write(int file, const void* bytes, size_t size) {
  if (file > STDERR_FILENO) count_change();
  return syscall(SYS_write, file, bytes, size);
}

int fsync(int file) {
  count_change();
  return (int)syscall(SYS_fsync, file);
}

int mkdir(const char* path, mode_t mode) {
  count_change();
  return (int)syscall(SYS_mkdirat, AT_FDCWD, path, mode);
}

int link(const char* from, const char* to) {
  count_change();
  return (int)syscall(SYS_linkat, AT_FDCWD, from, AT_FDCWD, to, 0);
}

int rename(const char* from, const char* to) {
  count_change();
  return (int)syscall(SYS_renameat2, AT_FDCWD, from, AT_FDCWD, to, 0);
}

// With PLAIN_RENAMES set: as a file system that knows no other.
int renameat2(int from_folder, const char* from, int to_folder, const char* to, unsigned flags) {
  if (flags != 0 && getenv("PLAIN_RENAMES") != NULL) {
    errno = EINVAL;
    return -1;
  }
  count_change();
  return (int)syscall(SYS_renameat2, from_folder, from, to_folder, to, flags);
}

int unlinkat(int folder, const char* path, int flags) {
  count_change();
  return (int)syscall(SYS_unlinkat, folder, path, flags);
}
int unlink(const char* path) { return unlinkat(AT_FDCWD, path, 0); }
int rmdir(const char* path) { return unlinkat(AT_FDCWD, path, AT_REMOVEDIR); }
int remove(const char* path) {
  count_change();
  return syscall(SYS_unlinkat, AT_FDCWD, path, 0) == 0 ? 0 : (int)syscall(SYS_unlinkat, AT_FDCWD, path, AT_REMOVEDIR);
}
