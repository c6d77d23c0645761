#include "ink/pdf_page.hpp"

#include <utility>

#include "ink/pdf_strokes.hpp"

namespace stringcourse::ink {

using paper::Group;
using paper::Role;

namespace {

constexpr int kSheet = -1;     // the sheet itself as a parent
constexpr int kArtifact = -2;  // no tag: decoration
constexpr int kNothing = -3;   // no marked stretch is open

bool has_items(const Group& group) { return !group.shapes.empty() || !group.circles.empty() || !group.texts.empty(); }

bool is_division(const Group& group) { return group.role == Role::Figure && group.label.empty() && !has_items(group); }

class PagePainter {
 public:
  explicit PagePainter(const paper::Sheet& sheet) : sheet_(sheet), strokes_(sheet) {}

  PaintedPage paint() {
    for (const Group& group : sheet_.groups) draw(group, kSheet);
    close();
    page_.content = strokes_.content();
    page_.used = strokes_.used();
    return std::move(page_);
  }

 private:
  void draw(const Group& group, int parent) {
    const int element = element_for(group, parent);
    if (has_items(group)) open(element);
    for (const paper::Shape& shape : group.shapes) strokes_.draw(shape);
    for (const paper::Circle& circle : group.circles) strokes_.draw(circle);
    for (const paper::Text& text : group.texts) strokes_.draw(text);
    for (const Group& inner : group.groups) draw(inner, element);
  }

  /// The element that the group's items belong to: a new one, its parent's, or none.
  int element_for(const Group& group, int parent) {
    if (parent == kArtifact || group.role == Role::Artifact) return kArtifact;
    if (group.role == Role::Figure && parent != kSheet && page_.elements[index(parent)].tag == "Figure") return parent;
    if (!has_items(group) && group.groups.empty()) return parent;
    const int number = static_cast<int>(page_.elements.size());
    Element element{tag_of(group), "", parent, {}};
    if (element.tag == "Figure") element.alternative = group.label.empty() ? sheet_.title : group.label;
    page_.elements.push_back(std::move(element));
    kids_of(parent).push_back({Kid::Kind::Element, number});
    return number;
  }

  std::string_view tag_of(const Group& group) {
    if (is_division(group)) return "Div";
    switch (group.role) {
      case Role::Heading: return std::exchange(heading_, "H2");
      case Role::Paragraph: return "P";
      case Role::Table: return "Table";
      case Role::TableRow: return "TR";
      case Role::TableCell: return "TD";
      case Role::Figure:
      case Role::Artifact: break;
    }
    return "Figure";
  }

  void open(int element) {
    if (open_ == element) return;
    close();
    open_ = element;
    if (element == kArtifact) return strokes_.put("/Artifact BMC\n");
    const int mark = static_cast<int>(page_.element_of_mark.size());
    page_.element_of_mark.push_back(element);
    page_.elements[index(element)].kids.push_back({Kid::Kind::Mark, mark});
    std::string line = "/";
    line += page_.elements[index(element)].tag;
    line += " << /MCID ";
    append_whole(line, mark);
    strokes_.put(line + " >> BDC\n");
  }

  void close() {
    if (open_ != kNothing) strokes_.put("EMC\n");
    open_ = kNothing;
  }

  std::vector<Kid>& kids_of(int parent) { return parent == kSheet ? page_.kids : page_.elements[index(parent)].kids; }
  static std::size_t index(int element) { return static_cast<std::size_t>(element); }

  const paper::Sheet& sheet_;
  Strokes strokes_;
  PaintedPage page_;
  std::string_view heading_ = "H1";
  int open_ = kNothing;
};

}  // namespace

PaintedPage paint_page(const paper::Sheet& sheet) { return PagePainter(sheet).paint(); }

}  // namespace stringcourse::ink
