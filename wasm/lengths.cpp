#include "wasm/lengths.hpp"

#include "job/stated.hpp"

namespace stringcourse::border {
namespace {

std::string step_text(std::int64_t steps, Tape tape) {
  const Length length = tape_step(tape) * steps;
  return tape == Tape::Inches ? total_inches(length) : millimetres_text(length);
}

}  // namespace

Refusals unread(const LengthsAsked& asked) {
  Refusals refusals;
  refusals.tape = asked.tape;
  if (!asked.read) return refusals;
  const auto length = read_length(typed_length(*asked.read).text, asked.tape);
  if (!length) refusals.add({"not-a-length", "/lengths/read", length.error().reason, length.error().remedy});
  return refusals;
}

void write_lengths(JsonOut& out, const LengthsAsked& asked) {
  out.object([&] {
    if (asked.read) {
      const TypedLength typed = typed_length(*asked.read);
      out.name("read");
      out.object([&] {
        out.field("nm", read_length(typed.text, asked.tape).value_or(Length()).in_nanometres());
        out.field("basis", typed.basis == Basis::Actual ? "actual" : "nominal");
      });
    }
    out.list("written", [&] {
      for (const std::int64_t steps : asked.write) out.text(step_text(steps, asked.tape));
    });
  });
}

}  // namespace stringcourse::border
