#include "cli/signals.hpp"

#include <unistd.h>

#include <csignal>
#include <cstring>
#include <initializer_list>

#include "cli/exit_code.hpp"
#include "measure/fault.hpp"

namespace stringcourse::cli {

namespace {

volatile std::sig_atomic_t stop_seen = 0;

// Only calls that are lawful in a signal handler.
extern "C" void end_with_fault(int) {
  constexpr char kText[] =
      "stringcourse: our fault: a check inside the program failed. No set was written over.\n"
      "Please keep the job file that led here; it is what we need to mend this.\n";
  [[maybe_unused]] const auto written = ::write(STDERR_FILENO, kText, sizeof kText - 1);
  ::_exit(kFault);
}

// The engine names the check that failed; what ends the program then comes as a signal.
void name_fault(const char* what) {
  constexpr char kBefore[] = "stringcourse: failed check: ";
  [[maybe_unused]] auto written = ::write(STDERR_FILENO, kBefore, sizeof kBefore - 1);
  written = ::write(STDERR_FILENO, what, std::strlen(what));
  written = ::write(STDERR_FILENO, "\n", 1);
}

extern "C" void note_stop(int) { stop_seen = 1; }

void handle(int signal, void (*handler)(int), int flags) {
  struct sigaction action = {};
  action.sa_handler = handler;
  action.sa_flags = flags;
  sigaction(signal, &action, nullptr);
}

// The handler has a stack of its own, so that a used-up stack is told of too.
void give_handlers_a_stack() {
  static char space[1 << 16];
  stack_t stack = {};
  stack.ss_sp = space;
  stack.ss_size = sizeof space;
  sigaltstack(&stack, nullptr);
}

}  // namespace

void catch_faults() {
  give_handlers_a_stack();
  on_fault(name_fault);
  for (const int signal : {SIGABRT, SIGILL, SIGTRAP, SIGSEGV, SIGBUS, SIGFPE})
    handle(signal, end_with_fault, SA_ONSTACK);
  for (const int signal : {SIGPIPE, SIGXFSZ}) std::signal(signal, SIG_IGN);
}

void ask_before_stopping() {
  for (const int signal : {SIGINT, SIGTERM, SIGHUP}) handle(signal, note_stop, SA_RESETHAND);
}

bool stop_asked() { return stop_seen != 0; }

}  // namespace stringcourse::cli
