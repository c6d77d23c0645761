#pragma once
// The outer shell of a PDF file: numbered objects, the table of where they stand, the trailer. Knows nothing of sheets.
// Written for ISO 32000-1:2008 (PDF 1.7).
#include <array>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace stringcourse::ink {

/// Takes bytes in the order of the file. Called many times; each piece is valid only during the call.
using Sink = std::function<void(std::string_view)>;

/// A PDF text string: ASCII as a literal, all else as UTF-16BE. Ill-formed UTF-8 and controls never reach the file.
[[nodiscard]] std::string pdf_text(std::string_view utf8);
/// "12 0 R".
[[nodiscard]] std::string reference(int object);

class PdfObjects {
 public:
  /// Writes the file's head at once.
  explicit PdfObjects(Sink sink);

  /// A number for an object that is written later.
  [[nodiscard]] int reserve();
  void write(int object, std::string_view body);
  /// `entries`: what stands in the stream's dictionary beside its length.
  void write_stream(int object, std::string_view entries, std::string_view bytes);
  /// Cross-reference table and trailer. The file's identity is a hash of its bytes: same sheets, same file.
  void finish(int catalog, int information);

 private:
  void put(std::string_view bytes);
  void begin(int object);

  Sink sink_;
  std::vector<std::uint64_t> offsets_{0};  // by object number; 0: not written
  std::uint64_t length_ = 0;
  std::array<std::uint64_t, 2> hash_{0xCBF29CE484222325, 0x84222325CBF29CE4};
};

}  // namespace stringcourse::ink
