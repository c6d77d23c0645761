#pragma once
// A language: the sentences of all facts, and the words of the sheets.
#include <initializer_list>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "catalogue/rules.hpp"
#include "measure/fact.hpp"
#include "measure/notation.hpp"

namespace stringcourse::words {

/// One sentence: {0}, {1} ... stand for a fact's values, {0|unit|units} for the first or the second word as value 0 is
/// one or another number.
struct Sentence {
  std::string_view name;
  std::string_view pattern;
};

struct SheetWords;

class Language {
 public:
  /// `sentences` in any order; they and the words of the sheets live as long as the language. `american`: of buildings
  /// whose masons are American.
  Language(std::initializer_list<std::span<const Sentence>> sentences, const SheetWords& sheets,
           const SheetWords& american);
  /// The pattern of a sentence; stops on a name that the language does not have.
  [[nodiscard]] std::string_view pattern(std::string_view name) const;
  [[nodiscard]] std::span<const Sentence> sentences() const { return sentences_; }
  [[nodiscard]] const SheetWords& sheets(bool american) const { return american ? *american_ : *sheets_; }

 private:
  std::vector<Sentence> sentences_;  // by name
  const SheetWords* sheets_;
  const SheetWords* american_;
};

[[nodiscard]] const Language& english();

/// Who reads: by which tape, in which language.
struct Reader {
  Tape tape = Tape::Inches;
  const Language& language = english();
};

/// A fact in its reader's words; "" of an empty one.
[[nodiscard]] std::string told(const Fact& fact, const Reader& reader);
/// What a rule says, without a full stop. Its limits stand as its document has them and, where the reader's tape is the
/// other one, as that tape shows them too: 1/4 in (6.4 mm).
[[nodiscard]] std::string rule_text(const Rule& rule, const Reader& reader);
/// The rule of that name as findings cite it: what it says, and its source in brackets; "" of "".
[[nodiscard]] std::string cited(std::string_view rule_id, const Reader& reader);

}  // namespace stringcourse::words
