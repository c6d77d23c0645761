#include "document/put.hpp"

namespace stringcourse::document {
namespace {

void put_length(JsonOut& out, std::string_view text, Length length) {
  out.object([&] {
    out.field("text", text);
    out.field("nm", length.in_nanometres());
  });
}

}  // namespace

void put(JsonOut& out, const View& view, Length value) { put_length(out, exact_text(value, view.tape()), value); }

void put(JsonOut& out, const View& view, const Rounded& value) {
  put_length(out, tape_text(value.length, view.tape()), value.length);
}

void put(JsonOut& out, const View&, PlanPoint value) {
  out.list([&] {
    out.number(value.x.in_nanometres());
    out.number(value.y.in_nanometres());
  });
}

}  // namespace stringcourse::document
