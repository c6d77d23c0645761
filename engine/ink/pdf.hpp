#pragma once
// Sheets to PDF 1.7: vectors, both weights of B612 embedded once, tagged for screen readers, searchable, and the same
// bytes for the same sheets on every machine (no dates, whole-number arithmetic).
//
//   std::string bytes = ink::pdf_bytes(sheets, {.title = "Kiln house, set A"});
//
// For long sets, page by page with the memory of one page:
//
//   ink::PdfWriter writer([&](std::string_view piece) { file.write(piece); }, {.title = "School, set B"});
//   for (...) writer.add(make_sheet(...));
//   writer.finish();
#include <span>
#include <string>
#include <vector>

#include "ink/pdf_fonts.hpp"
#include "ink/pdf_objects.hpp"
#include "ink/pdf_page.hpp"
#include "paper/display.hpp"
#include "paper/font.hpp"

namespace stringcourse::ink {

/// What the file says of itself.
struct PdfWords {
  std::string title;                                 // shown in the reader's title bar; UTF-8
  std::string language = "en";                       // BCP 47
  paper::FontFiles fonts = paper::embedded_fonts();  // whole
};

/// Writes a PDF page by page. Memory: one page, and a few numbers and the title of each page written.
class PdfWriter {
 public:
  /// The file's head goes to `sink` at once.
  PdfWriter(Sink sink, PdfWords words);
  /// Writes one page of the sheet's own size, with its tags and its bookmark.
  void add(const paper::Sheet& sheet);
  /// Writes fonts and tables. Nothing may be added afterwards; called once.
  void finish();

 private:
  struct Page {
    int page = 0, section = 0, marks = 0, bookmark = 0;
    std::string title;
  };

  void write_page(const Page& page, const paper::Sheet& sheet, const std::string& content);
  void write_tags(const Page& page, const PaintedPage& painted);
  void write_bookmarks();
  void write_tag_roots();
  void write_catalog();

  PdfObjects objects_;
  PdfWords words_;
  int catalog_, information_, pages_root_, tag_root_, document_, parent_tree_, bookmarks_, resources_;
  FontObjects fonts_[2];
  UsedGlyphs used_;
  std::vector<Page> pages_;
};

/// All sheets in one file.
[[nodiscard]] std::string pdf_bytes(std::span<const paper::Sheet> sheets, PdfWords words);

}  // namespace stringcourse::ink
