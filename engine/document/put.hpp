#pragma once
// The JSON writer: walks the field tables. Internal to document/.
#include <concepts>
#include <ranges>
#include <string_view>
#include <type_traits>

#include "document/json_out.hpp"
#include "document/shown.hpp"
#include "job/enum_names.hpp"
#include "measure/notation.hpp"

namespace stringcourse::document {

inline void put(JsonOut& out, const View&, bool value) { out.truth(value); }
template <std::integral Number>
  requires(!std::same_as<Number, bool>)
void put(JsonOut& out, const View&, Number value) {
  out.number(static_cast<std::int64_t>(value));
}
inline void put(JsonOut& out, const View&, std::string_view value) { out.text(value); }
inline void put(JsonOut& out, const View&, const Nanometres& value) { out.number(value.count); }
inline void put(JsonOut& out, const View&, const Verbatim& value) { out.raw(value.json); }
void put(JsonOut& out, const View& view, Length value);
void put(JsonOut& out, const View& view, const Rounded& value);
void put(JsonOut& out, const View& view, PlanPoint value);
template <class Enum>
  requires std::is_enum_v<Enum>
void put(JsonOut& out, const View&, Enum value) {
  out.text(enum_name(value));
}
template <HasShown Of>
void put(JsonOut& out, const View& view, const Of& of);
template <std::ranges::range List>
  requires(!std::convertible_to<List, std::string_view>)
void put(JsonOut& out, const View& view, const List& list) {
  out.list([&] {
    for (const auto& entry : list) put(out, view, entry);
  });
}

template <class Read, class Of>
decltype(auto) read_of(const ShownField<Read>& field, const View& view, const Of& of) {
  if constexpr (std::is_member_pointer_v<Read>)
    return (of.*field.read);
  else
    return field.read(view, of);
}

/// One field with its name; nothing where it is empty.
template <class Read, class Of>
void put_field(JsonOut& out, const View& view, const ShownField<Read>& field, const Of& of, bool named) {
  decltype(auto) value = read_of(field, view, of);
  if constexpr (OptionalOf<std::remove_cvref_t<decltype(value)>>::value) {
    if (!value) return;
    if (named) out.name(field.name);
    put(out, view, *value);
  } else {
    if (named) out.name(field.name);
    put(out, view, value);
  }
}

template <HasShown Of>
void put(JsonOut& out, const View& view, const Of& of) {
  constexpr bool is_list = requires { Shown<Of>::is_list; };
  if constexpr (requires { Shown<Of>::on_own_line; }) out.line_break();
  const auto fill = [&] { for_each_shown<Of>([&](const auto& field) { put_field(out, view, field, of, !is_list); }); };
  if constexpr (is_list)
    out.list(fill);
  else
    out.object(fill);
}

}  // namespace stringcourse::document
