#pragma once
// How the command line ends. Few codes, printed by `stringcourse help`, each held by a test in tests/command.

namespace stringcourse::cli {

enum ExitCode {
  kDone = 0,
  kFindings = 1,  // done, but there are findings and --strict asked that they fail
  kUsage = 2,     // the command was not understood
  kRefused = 3,   // the job cannot be planned; nothing was written
  kFile = 4,      // something could not be read or written
  kFault = 70,    // our fault
};

}  // namespace stringcourse::cli
