#include "ink/pdf_objects.hpp"

#include <algorithm>
#include <utility>

#include "ink/paint.hpp"
#include "paper/font_text.hpp"

namespace stringcourse::ink {
namespace {

void append_utf16(std::string& out, char32_t character) {
  if (character < 0x10000) return append_hexadecimal(out, character, 4);
  append_hexadecimal(out, 0xD800 + ((character - 0x10000) >> 10), 4);
  append_hexadecimal(out, 0xDC00 + ((character - 0x10000) & 0x3FF), 4);
}

}  // namespace

std::string pdf_text(std::string_view utf8) {
  const std::u32string characters = paper::drawable_characters(utf8);
  std::string text;
  if (std::ranges::all_of(characters, [](char32_t c) { return c < 0x80; })) {
    text += '(';
    for (const char32_t c : characters) {
      if (c == U'(' || c == U')' || c == U'\\') text += '\\';
      text += static_cast<char>(c);
    }
    return text + ')';
  }
  text += "<FEFF";
  for (const char32_t c : characters) append_utf16(text, c);
  return text + '>';
}

std::string reference(int object) {
  std::string text;
  append_whole(text, object);
  return text + " 0 R";
}

PdfObjects::PdfObjects(Sink sink) : sink_(std::move(sink)) {
  put("%PDF-1.7\n%\xE2\xE3\xCF\xD3\n");  // bytes above 127 tell mail and copying programs that the file is binary
}

int PdfObjects::reserve() {
  offsets_.push_back(0);
  return static_cast<int>(offsets_.size()) - 1;
}

void PdfObjects::write(int object, std::string_view body) {
  begin(object);
  put(body);
  put("\nendobj\n");
}

void PdfObjects::write_stream(int object, std::string_view entries, std::string_view bytes) {
  std::string head = "<< ";
  head += entries;
  head += " /Length ";
  append_whole(head, static_cast<std::int64_t>(bytes.size()));
  head += " >>\nstream\n";
  begin(object);
  put(head);
  put(bytes);
  put("\nendstream\nendobj\n");
}

void PdfObjects::finish(int catalog, int information) {
  const std::uint64_t table_at = length_;
  std::string table = "xref\n0 ";
  append_whole(table, static_cast<std::int64_t>(offsets_.size()));
  table += "\n0000000000 65535 f \n";
  for (std::size_t k = 1; k < offsets_.size(); ++k) {
    const std::string digits = std::to_string(offsets_[k]);
    table.append(10 - std::min<std::size_t>(10, digits.size()), '0');
    table += digits + " 00000 n \n";
    if (table.size() < 16'000) continue;
    put(table);
    table.clear();
  }
  put(table);
  std::string identity;
  for (const std::uint64_t half : hash_) append_hexadecimal(identity, half, 16);
  std::string trailer = "trailer\n<< /Size ";
  append_whole(trailer, static_cast<std::int64_t>(offsets_.size()));
  trailer += " /Root " + reference(catalog) + " /Info " + reference(information);
  trailer += " /ID [<" + identity + "> <" + identity + ">] >>\nstartxref\n";
  append_whole(trailer, static_cast<std::int64_t>(table_at));
  put(trailer + "\n%%EOF\n");
}

void PdfObjects::begin(int object) {
  offsets_[static_cast<std::size_t>(object)] = length_;
  std::string head;
  append_whole(head, object);
  put(head + " 0 obj\n");
}

void PdfObjects::put(std::string_view bytes) {
  for (const char c : bytes) {  // FNV-1a, twice from different starts
    for (std::uint64_t& half : hash_) half = (half ^ static_cast<std::uint8_t>(c)) * 0x100000001B3;
  }
  length_ += bytes.size();
  sink_(bytes);
}

}  // namespace stringcourse::ink
