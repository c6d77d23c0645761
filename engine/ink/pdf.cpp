#include "ink/pdf.hpp"

#include <utility>

#include "ink/pdf_strokes.hpp"

namespace stringcourse::ink {
namespace {

/// Kids as an array body: marks by number, elements by reference.
std::string kids_text(const std::vector<Kid>& kids, const std::vector<int>& objects) {
  std::string text;
  for (const Kid& kid : kids) {
    if (kid.kind == Kid::Kind::Element) text += reference(objects[static_cast<std::size_t>(kid.number)]);
    else append_whole(text, kid.number);
    text += ' ';
  }
  return text;
}

std::string element_text(const Element& element, int parent, int page, const std::vector<int>& objects) {
  std::string text = "<< /Type /StructElem /S /";
  text += element.tag;
  text += " /P " + reference(parent) + " /Pg " + reference(page);
  if (!element.alternative.empty()) text += " /Alt " + pdf_text(element.alternative);
  return text + " /K [" + kids_text(element.kids, objects) + "] >>";
}

}  // namespace

PdfWriter::PdfWriter(Sink sink, PdfWords words)
    : objects_(std::move(sink)),
      words_(std::move(words)),
      catalog_(objects_.reserve()),
      information_(objects_.reserve()),
      pages_root_(objects_.reserve()),
      tag_root_(objects_.reserve()),
      document_(objects_.reserve()),
      parent_tree_(objects_.reserve()),
      bookmarks_(objects_.reserve()),
      resources_(objects_.reserve()),
      fonts_{reserve_font(objects_), reserve_font(objects_)} {
  objects_.write(resources_,
                 "<< /Font << /R " + reference(fonts_[0].font) + " /B " + reference(fonts_[1].font) + " >> >>");
}

void PdfWriter::add(const paper::Sheet& sheet) {
  const Page page{objects_.reserve(), objects_.reserve(), objects_.reserve(), objects_.reserve(), sheet.title};
  const PaintedPage painted = paint_page(sheet);
  used_.add(painted.used);
  write_page(page, sheet, painted.content);
  write_tags(page, painted);
  pages_.push_back(page);
}

void PdfWriter::write_page(const Page& page, const paper::Sheet& sheet, const std::string& content) {
  const int stream = objects_.reserve();
  std::string body = "<< /Type /Page /Parent " + reference(pages_root_) + " /MediaBox [0 0 ";
  append_points(body, sheet.width);
  body += ' ';
  append_points(body, sheet.height);
  body += "] /Resources " + reference(resources_) + " /Contents " + reference(stream) + " /Tabs /S /StructParents ";
  append_whole(body, static_cast<std::int64_t>(pages_.size()));
  objects_.write(page.page, body + " >>");
  objects_.write_stream(stream, "", content);
}

void PdfWriter::write_tags(const Page& page, const PaintedPage& painted) {
  std::vector<int> numbers;
  for (std::size_t k = 0; k < painted.elements.size(); ++k) numbers.push_back(objects_.reserve());
  for (std::size_t k = 0; k < painted.elements.size(); ++k) {
    const int parent = painted.elements[k].parent;
    const int above = parent < 0 ? page.section : numbers[static_cast<std::size_t>(parent)];
    objects_.write(numbers[k], element_text(painted.elements[k], above, page.page, numbers));
  }
  objects_.write(page.section, "<< /Type /StructElem /S /Sect /P " + reference(document_) + " /T " +
                                   pdf_text(page.title) + " /Pg " + reference(page.page) + " /K [" +
                                   kids_text(painted.kids, numbers) + "] >>");
  std::string marks = "[";
  for (const int element : painted.element_of_mark)
    marks += reference(numbers[static_cast<std::size_t>(element)]) + ' ';
  objects_.write(page.marks, marks + ']');
}

void PdfWriter::write_bookmarks() {
  for (std::size_t k = 0; k < pages_.size(); ++k) {
    std::string body = "<< /Title " + pdf_text(pages_[k].title) + " /Parent " + reference(bookmarks_);
    if (k > 0) body += " /Prev " + reference(pages_[k - 1].bookmark);
    if (k + 1 < pages_.size()) body += " /Next " + reference(pages_[k + 1].bookmark);
    objects_.write(pages_[k].bookmark, body + " /Dest [" + reference(pages_[k].page) + " /Fit] >>");
  }
  std::string root = "<< /Type /Outlines";
  if (!pages_.empty()) {
    root += " /First " + reference(pages_.front().bookmark) + " /Last " + reference(pages_.back().bookmark);
    root += " /Count ";
    append_whole(root, static_cast<std::int64_t>(pages_.size()));
  }
  objects_.write(bookmarks_, root + " >>");
}

void PdfWriter::write_tag_roots() {
  std::string sections, marks;
  for (std::size_t k = 0; k < pages_.size(); ++k) {
    sections += reference(pages_[k].section) + ' ';
    append_whole(marks, static_cast<std::int64_t>(k));
    marks += ' ' + reference(pages_[k].marks) + ' ';
  }
  objects_.write(document_,
                 "<< /Type /StructElem /S /Document /P " + reference(tag_root_) + " /K [" + sections + "] >>");
  objects_.write(parent_tree_, "<< /Nums [" + marks + "] >>");
  std::string root = "<< /Type /StructTreeRoot /K [" + reference(document_) + "] /ParentTree " +
                     reference(parent_tree_) + " /ParentTreeNextKey ";
  append_whole(root, static_cast<std::int64_t>(pages_.size()));
  objects_.write(tag_root_, root + " >>");
}

void PdfWriter::write_catalog() {
  std::string kids;
  for (const Page& page : pages_) kids += reference(page.page) + ' ';
  std::string root = "<< /Type /Pages /Kids [" + kids + "] /Count ";
  append_whole(root, static_cast<std::int64_t>(pages_.size()));
  objects_.write(pages_root_, root + " >>");
  objects_.write(information_, "<< /Title " + pdf_text(words_.title) + " /Creator (Stringcourse) >>");
  objects_.write(catalog_, "<< /Type /Catalog /Pages " + reference(pages_root_) + " /Lang " +
                               pdf_text(words_.language) + " /MarkInfo << /Marked true >> /StructTreeRoot " +
                               reference(tag_root_) + " /Outlines " + reference(bookmarks_) +
                               " /ViewerPreferences << /DisplayDocTitle true >> >>");
}

void PdfWriter::finish() {
  for (const paper::Weight weight : kWeights) {
    write_font(objects_, fonts_[weight == paper::Weight::Bold ? 1 : 0], weight, used_, words_.fonts);
  }
  write_bookmarks();
  write_tag_roots();
  write_catalog();
  objects_.finish(catalog_, information_);
}

std::string pdf_bytes(std::span<const paper::Sheet> sheets, PdfWords words) {
  std::string bytes;
  PdfWriter writer([&](std::string_view piece) { bytes += piece; }, std::move(words));
  for (const paper::Sheet& sheet : sheets) writer.add(sheet);
  writer.finish();
  return bytes;
}

}  // namespace stringcourse::ink
