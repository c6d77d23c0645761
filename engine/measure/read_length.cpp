// Reading of lengths. The grammar, after an optional leading minus (spaces may stand round units and signs):
//
//   length   = feet [ ["-"] amount [inch] ]      14'-7 5/16"   14 ft 7 in   14.5' (decimal feet stand alone)
//            | amount inch                       175 5/16"   7-5/16 in   7.625"   ½"
//            | number (mm | cm | m)              4451 mm   4.451 m
//            | amount                            as the tape says: inches, or a plain number of millimetres
//   amount   = digits [ (space | "-") fraction ] | fraction | decimal
//   fraction = digits "/" (2 4 8 16 32 64), less than 1 | ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞ (these may follow their digits at once)
#include "measure/notation.hpp"
#include "measure/tokens.hpp"

namespace stringcourse {
namespace {

using notation::Mark;
using notation::Token;

/// Longer than any sensible way to write a length; keeps hostile texts cheap.
constexpr std::size_t kLongestText = 100;

template <typename T>
using Read = std::expected<T, NotationError>;

/// A number as written: whole, decimal, or whole with a binary fraction.
struct Amount {
  Token number;
  std::int64_t numerator = 0;
  std::int64_t denominator = 1;
  bool has_fraction = false;
};

struct Reader {
  std::string_view text;
  std::vector<Token> tokens;
  Tape tape;
  std::size_t at = 0;

  const Token& peek(std::size_t ahead = 0) const {
    const std::size_t last = tokens.size() - 1;
    return tokens[at + ahead < last ? at + ahead : last];
  }
  bool sees(Mark mark, std::size_t ahead = 0) const { return peek(ahead).mark == mark; }
  bool takes(Mark mark) {
    if (!sees(mark)) return false;
    ++at;
    return true;
  }
};

std::unexpected<NotationError> error(std::string_view says, std::string_view text, Fact remedy) {
  return std::unexpected(NotationError{fact(says, {FactValue::typed(text)}), std::move(remedy)});
}

Fact example_of(Tape tape) { return fact(tape == Tape::Inches ? "length-like-inches" : "length-like-millimetres"); }

std::unexpected<NotationError> error_nothing(const Reader& reader) {
  return error("length-nothing", reader.text, example_of(reader.tape));
}

/// Anything that is left over, doubled or out of order.
std::unexpected<NotationError> error_left_over(const Reader& reader) {
  if (reader.sees(Mark::End)) { return error("length-breaks-off", reader.text, example_of(reader.tape)); }
  const std::size_t from = static_cast<std::size_t>(reader.peek().text.data() - reader.text.data());
  const auto typed = FactValue::typed;
  return std::unexpected(NotationError{fact("length-left-over", {typed(reader.text), typed(reader.text.substr(from))}),
                                       fact("length-one-only", {example_of(reader.tape)})});
}

constexpr bool is_tape_denominator(std::int64_t d) {
  return d == 2 || d == 4 || d == 8 || d == 16 || d == 32 || d == 64;
}

/// Does a fraction follow the digits just taken? "7 5/16", "7-5/16", "7 ½", "7½".
bool sees_added_fraction(const Reader& reader) {
  if (reader.sees(Mark::Vulgar)) return true;
  if (reader.sees(Mark::Number)) return reader.sees(Mark::Slash, 1);
  const bool tight = reader.sees(Mark::Hyphen) && !reader.peek().spaced && !reader.peek(1).spaced;
  return tight && (reader.sees(Mark::Vulgar, 1) || (reader.sees(Mark::Number, 1) && reader.sees(Mark::Slash, 2)));
}

Read<Amount> fraction_checked(const Reader& reader, Amount amount, const Token& over, const Token& under) {
  if (over.decimal || under.decimal || !is_tape_denominator(under.whole)) {
    return error("length-fraction-off-tape", reader.text, fact("length-tape-fractions"));
  }
  if (over.whole >= under.whole) { return error("length-fraction-whole", reader.text, fact("length-carry-inch")); }
  amount.numerator = over.whole;
  amount.denominator = under.whole;
  return amount;
}

/// 5/16 or ⅝, added to what `amount` holds already.
Read<Amount> take_fraction(Reader& reader, Amount amount) {
  amount.has_fraction = true;
  const Token over = reader.peek();
  ++reader.at;
  if (over.mark == Mark::Vulgar) {
    amount.numerator = over.whole;
    amount.denominator = over.parts;
    return amount;
  }
  const bool spaced = reader.peek().spaced || reader.peek(1).spaced;
  if (!reader.takes(Mark::Slash) || !reader.sees(Mark::Number) || spaced) {
    return error("length-fraction-broken", reader.text, fact("length-fraction-tight"));
  }
  const Token under = reader.peek();
  ++reader.at;
  return fraction_checked(reader, amount, over, under);
}

Read<Amount> take_amount(Reader& reader) {
  const bool fraction_alone = reader.sees(Mark::Vulgar) || (reader.sees(Mark::Number) && reader.sees(Mark::Slash, 1));
  if (fraction_alone) return take_fraction(reader, Amount{});
  if (!reader.sees(Mark::Number)) return error_left_over(reader);
  Amount amount{.number = reader.peek()};
  ++reader.at;
  if (!sees_added_fraction(reader)) return amount;
  if (amount.number.decimal) { return error("length-decimal-and-fraction", reader.text, fact("length-either")); }
  const bool tight_number = reader.sees(Mark::Number) && !reader.peek().spaced;
  if (tight_number) return error_left_over(reader);
  reader.takes(Mark::Hyphen);
  return take_fraction(reader, amount);
}

std::unexpected<NotationError> error_inexact(const Reader& reader, const Amount& amount) {
  const auto typed = FactValue::typed;
  return std::unexpected(
      NotationError{fact("length-inexact", {typed(reader.text), typed(amount.number.text)}), fact("length-exact")});
}

/// `amount` units of `unit` each, exactly. A fraction only ever comes with inches, whose 64ths are exact.
Read<Length> length_of(const Reader& reader, const Amount& amount, Length unit) {
  if (amount.number.places >= notation::kTooFine) return error_inexact(reader, amount);
  std::int64_t scale = 1;
  for (int place = 0; place < amount.number.places; ++place) scale *= 10;
  const int128 scaled = (static_cast<int128>(amount.number.whole) * scale + amount.number.parts) * unit.in_nanometres();
  if (scaled % scale != 0) return error_inexact(reader, amount);
  const std::int64_t fraction = unit.in_nanometres() * amount.numerator / amount.denominator;
  return Length::nanometres(static_cast<std::int64_t>(scaled / scale) + fraction);
}

Read<Length> length_without_fraction(const Reader& reader, const Amount& amount, Length unit) {
  if (!amount.has_fraction) return length_of(reader, amount, unit);
  return error("length-fraction-not-inch", reader.text, fact("length-inch-fractions"));
}

/// What follows whole feet: nothing, or inches under 12, with or without their mark.
Read<Length> take_inches_after_feet(Reader& reader) {
  if (reader.sees(Mark::End)) return Length{};
  reader.takes(Mark::Hyphen);
  const auto amount = take_amount(reader);
  if (!amount) return std::unexpected(amount.error());
  reader.takes(Mark::Inch);
  const auto inches = length_of(reader, *amount, Length::inches(1));
  if (inches && *inches >= Length::feet(1)) {
    return error("length-inches-over-foot", reader.text, fact("length-carry-foot"));
  }
  return inches;
}

Read<Length> take_feet(Reader& reader, const Amount& amount) {
  const auto feet = length_without_fraction(reader, amount, Length::feet(1));
  if (!feet || amount.number.decimal) return feet;
  const auto inches = take_inches_after_feet(reader);
  if (!inches) return inches;
  return *feet + *inches;
}

/// A number without a unit.
Read<Length> bare_length(const Reader& reader, const Amount& amount) {
  if (reader.tape == Tape::Inches) return length_of(reader, amount, Length::inches(1));
  return length_without_fraction(reader, amount, Length::millimetres(1));
}

Read<Length> take_magnitude(Reader& reader) {
  const auto amount = take_amount(reader);
  if (!amount) return std::unexpected(amount.error());
  if (reader.takes(Mark::Feet)) return take_feet(reader, *amount);
  if (reader.takes(Mark::Inch)) return length_of(reader, *amount, Length::inches(1));
  if (reader.takes(Mark::Millimetre)) return length_without_fraction(reader, *amount, Length::millimetres(1));
  if (reader.takes(Mark::Centimetre)) return length_without_fraction(reader, *amount, Length::millimetres(10));
  if (reader.takes(Mark::Metre)) return length_without_fraction(reader, *amount, Length::millimetres(1000));
  if (reader.sees(Mark::End)) return bare_length(reader, *amount);
  return error_left_over(reader);
}

}  // namespace

std::expected<Length, NotationError> read_length(std::string_view text, Tape tape) {
  if (text.size() > kLongestText) { return error("length-text-too-long", text, example_of(tape)); }
  Reader reader{text, notation::tokens_of(text), tape};
  if (reader.sees(Mark::End)) return error_nothing(reader);
  const bool negative = reader.sees(Mark::Hyphen) && !reader.peek(1).spaced && reader.takes(Mark::Hyphen);
  const auto magnitude = take_magnitude(reader);
  if (!magnitude) return magnitude;
  if (!reader.sees(Mark::End)) return error_left_over(reader);
  if (*magnitude > kLongest) { return error("length-too-long", text, fact("length-check-unit")); }
  return negative ? -*magnitude : *magnitude;
}

}  // namespace stringcourse
