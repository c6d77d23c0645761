#include "sheet/sheets.hpp"

#include <algorithm>

#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"

namespace stringcourse::sheet {
namespace {

bool is_name_character(char byte) {
  return (byte >= 'a' && byte <= 'z') || (byte >= 'A' && byte <= 'Z') || (byte >= '0' && byte <= '9');
}

// Only letters and digits of a user's name get into a file's name.
std::string name_part(const std::string& text) {
  std::string part;
  for (const char byte : text) {
    if (is_name_character(byte) && part.size() < 24) part += byte;
  }
  return part.empty() ? "side" : part;
}

// "course-1-AB".
std::string name_of(const SheetKind& kind, const Context& context, const PlannedSheet& sheet) {
  std::string name(kind.name);
  if (sheet.course > 0) name += "-" + number_text(sheet.course);
  if (sheet.wall >= 0) name += "-" + name_part(context.wall(sheet.wall).name);
  return name;
}

std::string caution_text(const Words& words, const Caution& caution) {
  const Rule* found = find_rule(caution.rule);
  return found ? found->text + ". (" + found->source.text + ")" : std::string(words.*caution.instead);
}

Context as_poured(const Context& context) {
  const PourOf pour = pour_of(context.answer);
  if (&pour.building == &context.answer.building) return context;
  const Building& poured = pour.building;
  std::shared_ptr<const Building> renamed = with_short_names(poured, context.names);
  return {renamed ? *renamed : poured, pour.layout, context.answer, context.words, context.page,
          context.cuts, context.names, &poured, renamed};
}

// The sheets of one kind in a set.
struct Chapter {
  const SheetKind& kind;
  const Context& context;
  List list = {};
  std::vector<PlannedSheet> sheets = {};
  const List* under = nullptr;  // the list that stands under this one's
};

// One sheet of it.
struct Entry {
  const Chapter& chapter;
  const PlannedSheet& planned;
  std::string name;
};

class Set {
 public:
  Set(const Answer& answer, Paper paper)
      : now_(context_of(answer, paper)), poured_(as_poured(now_)) {
    for (const SheetKind* kind : sheet_kinds()) add_chapter(*kind);
    for (Chapter& chapter : chapters_) list_sheets(chapter);
    for (const Chapter& chapter : chapters_) {
      for (const PlannedSheet& sheet : chapter.sheets) {
        entries_.push_back({chapter, sheet, name_of(chapter.kind, chapter.context, sheet)});
      }
    }
    number_names();
  }
  Set(const Set&) = delete;
  Set& operator=(const Set&) = delete;

  [[nodiscard]] std::size_t size() const { return entries_.size(); }
  [[nodiscard]] SheetName name(std::size_t index) const {
    return {entries_[index].name, entries_[index].planned.title};
  }
  [[nodiscard]] Sheet sheet(std::size_t index) const {
    const Entry& entry = entries_[index];
    const std::string job = now_.answer.job.name.empty() ? std::string(now_.words.untitled) : now_.answer.job.name;
    const FrameText text{job, entry.planned.title, now_.answer.job.issued, now_.answer.job.drawn_by,
                         caution_text(now_.words, entry.chapter.kind.caution),
                         index + 1, size(), entry.planned.scale, now_.names};
    Sheet sheet{.name = entry.name, .title = entry.planned.title, .width = now_.page.width, .height = now_.page.height,
                .groups = frame_of(now_.page, text, now_.words, now_.tape())};
    sheet.groups.insert(sheet.groups.begin() + 1, drawn(entry));
    return sheet;
  }

 private:
  void add_chapter(const SheetKind& kind) {
    const Context& context = kind.hold_point == HoldPoint::Pour ? poured_ : now_;
    if (kind.applies != nullptr && !kind.applies(context)) return;
    Chapter chapter{kind, context};
    if (kind.sheets != nullptr) chapter.sheets = kind.sheets(context);
    if (kind.table != nullptr) chapter.list.table = kind.table(context);
    if (kind.note != nullptr) chapter.list.note = now_.words.*kind.note;
    if (kind.made_note != nullptr) chapter.list.note = kind.made_note(now_);
    chapters_.push_back(std::move(chapter));
  }

  // Sheets of a list, unless it stands under another.
  void list_sheets(Chapter& chapter) {
    if (chapter.list.table.lines.empty()) return;
    const auto above = std::ranges::find(chapters_, chapter.kind.under, [](const Chapter& one) { return &one.kind; });
    const bool stands = above != chapters_.end() && !above->sheets.empty();
    if (stands && fits_under(now_, above->list, chapter.list)) above->under = &chapter.list;
    else chapter.sheets = sheets_of_list(now_, chapter.list);
  }

  // "07-elevation-AB": the number makes names unique and rising.
  void number_names() {
    std::size_t width = 2;
    for (std::size_t many = entries_.size(); many >= 100; many /= 10) ++width;
    for (std::size_t index = 0; index < entries_.size(); ++index) {
      std::string number = number_text(static_cast<long long>(index + 1));
      while (number.size() < width) number.insert(number.begin(), '0');
      entries_[index].name = number + "-" + entries_[index].name;
    }
  }

  [[nodiscard]] Group drawn(const Entry& entry) const {
    const Chapter& chapter = entry.chapter;
    if (chapter.kind.draw != nullptr) return chapter.kind.draw(chapter.context, entry.planned);
    return draw_list(now_, entry.planned, chapter.list, chapter.under);
  }

  Context now_, poured_;
  std::vector<Chapter> chapters_;
  std::vector<Entry> entries_;
};

}  // namespace

std::vector<SheetName> sheet_names(const Answer& answer, Paper paper) {
  const Set set(answer, paper);
  std::vector<SheetName> names;
  for (std::size_t index = 0; index < set.size(); ++index) names.push_back(set.name(index));
  return names;
}

void for_each_sheet(const Answer& answer, Paper paper, const std::function<void(const Sheet&)>& take) {
  const Set set(answer, paper);
  for (std::size_t index = 0; index < set.size(); ++index) take(set.sheet(index));
}

std::vector<Sheet> make_sheets(const Answer& answer, Paper paper) {
  std::vector<Sheet> sheets;
  for_each_sheet(answer, paper, [&](const Sheet& sheet) { sheets.push_back(sheet); });
  return sheets;
}

}  // namespace stringcourse::sheet
