#include "sheet/sheets.hpp"

#include <algorithm>

#include "catalogue/rules.hpp"
#include "measure/digits.hpp"
#include "sheet/list_sheet.hpp"
#include "sheet/registry.hpp"
#include "words/language.hpp"

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

std::string caution_text(const Context& context, const Caution& caution) {
  const Rule* found = find_rule(caution.rule);
  return found ? words::rule_text(*found, context.reader()) + ". (" + found->source.text + ")"
               : std::string(context.words.*caution.instead);
}

Context as_poured(const Context& context) {
  const PourOf pour = pour_of(context.answer);
  if (&pour.building == &context.answer.building) return context;
  const Building& poured = pour.building;
  std::shared_ptr<const Building> renamed = with_short_names(poured, context.names);
  return {renamed ? *renamed : poured,
          pour.layout,
          context.answer,
          context.words,
          context.page,
          context.cuts,
          context.names,
          &poured,
          renamed,
          context.language,
          context.wanted};
}

// "2. Pour: set the dowels along the forms".
std::string use_text(const Context& context, const SheetKind& kind) {
  const auto point = static_cast<std::size_t>(kind.hold_point);
  return words::fill_in(context.words.used_at,
                        {number_text(static_cast<long long>(point)), std::string(context.words.hold_points[point - 1]),
                         std::string(context.words.*kind.purpose)});
}

// The blocks that are laid, by their ids; what the title block has no room for is counted.
std::string block_text(const Context& context) {
  const std::vector<Series>& series = context.building.series;
  std::string text = short_name(context.names, series.front().id);
  if (series.size() > 1) text += " +" + number_text(static_cast<long long>(series.size()) - 1);
  return text;
}

// What one kind of sheet comes to in a set; nothing, where it does not apply.
struct Chapter {
  const SheetKind* kind = nullptr;
  const Context* context = nullptr;
  List list = {};
  std::vector<PlannedSheet> sheets = {};
  std::vector<const Chapter*> under = {};  // whose lists stand under this one's, from the top
  Chapter* host = nullptr;                 // under whose list this one's stands

  [[nodiscard]] std::vector<const List*> lists_under() const {
    std::vector<const List*> lists;
    for (const Chapter* chapter : under) lists.push_back(&chapter->list);
    return lists;
  }
  /// The other hold point that has a list on this one's sheet.
  [[nodiscard]] std::optional<HoldPoint> also() const {
    for (const Chapter* chapter : under) {
      if (chapter->kind->hold_point != kind->hold_point) return chapter->kind->hold_point;
    }
    return std::nullopt;
  }
  /// A sheet is for two hold points at most.
  [[nodiscard]] bool takes(HoldPoint point) const {
    return point == kind->hold_point || also().value_or(point) == point;
  }
};

// One sheet of a set.
struct Place {
  const Chapter& chapter;
  const PlannedSheet& planned;
};

class Set {
 public:
  Set(const Answer& answer, Paper paper, const words::Language& language, const Wanted& wanted)
      : now_(context_of(answer, paper, language, wanted)), poured_(as_poured(now_)), chapters_(sheet_kinds().size()) {
    for (std::size_t index = 0; index < chapters_.size(); ++index) begin(chapters_[index], *sheet_kinds()[index]);
    for (Chapter& chapter : chapters_) {
      add_list(chapter);
      size_ += chapter.sheets.size();
    }
  }
  Set(const Set&) = delete;
  Set& operator=(const Set&) = delete;

  [[nodiscard]] std::size_t size() const { return size_; }
  [[nodiscard]] SheetName name(std::size_t index) const {
    const auto [chapter, planned] = place(index);
    SheetName name{file_name(index), planned.title, chapter.kind->hold_point, std::nullopt};
    if (planned.last_line == chapter.list.table.lines.size()) name.also = chapter.also();
    return name;
  }
  [[nodiscard]] Sheet sheet(std::size_t index) const {
    const auto [chapter, planned] = place(index);
    const std::string job = now_.answer.job.name.empty() ? std::string(now_.words.untitled) : now_.answer.job.name;
    const FrameText text{job,
                         planned.title,
                         now_.answer.job.issued,
                         now_.answer.job.drawn_by,
                         caution_text(now_, chapter.kind->caution),
                         use_text(now_, *chapter.kind),
                         block_text(now_),
                         index + 1,
                         size_,
                         planned.scale,
                         now_.names};
    Sheet sheet{.name = file_name(index),
                .title = planned.title,
                .width = now_.page.width,
                .height = now_.page.height,
                .groups = frame_of(now_.page, text, now_.words, now_.tape())};
    sheet.groups.insert(sheet.groups.begin() + 1, drawn(chapter, planned));
    return sheet;
  }

 private:
  void begin(Chapter& chapter, const SheetKind& kind) {
    chapter.kind = &kind;
    chapter.context = kind.hold_point == HoldPoint::Pour ? &poured_ : &now_;
    if (kind.on_request != nullptr && !(now_.wanted.*kind.on_request)) return;
    if (kind.applies != nullptr && !kind.applies(*chapter.context)) return;
    if (kind.sheets != nullptr) chapter.sheets = kind.sheets(*chapter.context);
    if (kind.table != nullptr) chapter.list.table = kind.table(*chapter.context);
    if (kind.note != nullptr) chapter.list.note = now_.words.*kind.note;
    if (kind.made_note != nullptr) chapter.list.note = kind.made_note(now_);
  }

  // Sheets of a list, unless it stands under another, or beside one that stands there.
  void add_list(Chapter& chapter) {
    if (chapter.list.table.lines.empty()) return;
    for (const SheetKind* above : chapter.kind->under) {
      if (above != nullptr && put_under(chapter, above)) return;
    }
    chapter.sheets = sheets_of_list(now_, chapter.list);
  }

  // The list under those of the sheet that has the other kind's, in small letters where that makes room.
  bool put_under(Chapter& chapter, const SheetKind* kind) {
    const auto above = std::ranges::find(chapters_, kind, &Chapter::kind);
    if (above == chapters_.end()) return false;
    Chapter& host = above->host != nullptr ? *above->host : *above;
    if (host.sheets.empty() || !host.takes(chapter.kind->hold_point)) return false;
    for (const List& upper : sizes_of(host)) {
      for (List& lower : sizes_of(chapter)) {
        if (!fits_under(now_, upper, host.lists_under(), lower)) continue;
        host.list = upper, host.sheets = sheets_of_list(now_, upper), host.under.push_back(&chapter);
        chapter.list = std::move(lower), chapter.host = &host;
        return true;
      }
    }
    return false;
  }

  [[nodiscard]] std::vector<List> sizes_of(const Chapter& chapter) const {
    std::vector<List> sizes{chapter.list};
    if (chapter.kind->small_table != nullptr)
      sizes.push_back({chapter.kind->small_table(*chapter.context), chapter.list.note});
    return sizes;
  }

  [[nodiscard]] Place place(std::size_t index) const {
    std::size_t chapter = 0;
    while (index >= chapters_[chapter].sheets.size()) index -= chapters_[chapter++].sheets.size();
    return {chapters_[chapter], chapters_[chapter].sheets[index]};
  }

  // "07-course-1-AB": the number makes names unique and rising.
  [[nodiscard]] std::string file_name(std::size_t index) const {
    const auto [chapter, planned] = place(index);
    std::string number = number_text(static_cast<long long>(index + 1));
    const std::size_t width = std::max<std::size_t>(2, number_text(static_cast<long long>(size_)).size());
    number.insert(0, width - number.size(), '0');
    std::string name = number + "-" + std::string(chapter.kind->name);
    if (planned.course > 0) name += "-" + number_text(planned.course);
    if (planned.wall >= 0) name += "-" + name_part(chapter.context->wall(planned.wall).name);
    return name;
  }

  [[nodiscard]] Group drawn(const Chapter& chapter, const PlannedSheet& planned) const {
    if (chapter.kind->draw != nullptr) return chapter.kind->draw(*chapter.context, planned);
    return draw_list(now_, planned, chapter.list, chapter.lists_under());
  }

  Context now_, poured_;
  std::vector<Chapter> chapters_;  // in the order of the registry
  std::size_t size_ = 0;
};

bool is_wanted(const SheetName& name, const Wanted& wanted) {
  return !wanted.only || name.hold_point == *wanted.only || name.also == wanted.only;
}

}  // namespace

std::vector<SheetName> sheet_names(const Answer& answer, Paper paper, const Wanted& wanted) {
  const Set set(answer, paper, words::english(), wanted);
  std::vector<SheetName> names;
  for (std::size_t index = 0; index < set.size(); ++index) {
    if (is_wanted(set.name(index), wanted)) names.push_back(set.name(index));
  }
  return names;
}

void for_each_sheet(const Answer& answer, Paper paper, const std::function<void(const Sheet&)>& take,
                    const words::Language& language, const Wanted& wanted) {
  const Set set(answer, paper, language, wanted);
  for (std::size_t index = 0; index < set.size(); ++index) {
    if (is_wanted(set.name(index), wanted)) take(set.sheet(index));
  }
}

std::vector<Sheet> make_sheets(const Answer& answer, Paper paper, const words::Language& language,
                               const Wanted& wanted) {
  std::vector<Sheet> sheets;
  for_each_sheet(answer, paper, [&](const Sheet& sheet) { sheets.push_back(sheet); }, language, wanted);
  return sheets;
}

}  // namespace stringcourse::sheet
