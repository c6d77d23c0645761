#include "solve/answer_words.hpp"

#include <algorithm>
#include <cstddef>
#include <utility>

namespace stringcourse {

namespace {

// Words in the order of the enum.
template <typename Enum, std::size_t Count>
std::string_view word(const std::string_view (&words)[Count], Enum value) {
  const auto index = static_cast<std::size_t>(std::to_underlying(value));
  return index < Count ? words[index] : std::string_view("unknown");
}

constexpr std::string_view kRunEnds[] = {"through-corner", "butt-corner", "jamb", "free-end", "control-joint",
                                         "tied-junction", "lapped-butt", "entering-junction", "slot-side", "lintel-end"};
constexpr std::string_view kCutEnds[] = {"none", "start", "end"};
constexpr std::string_view kBarReasons[] = {"corner", "jamb", "beside-control-joint", "dimensioned", "cast", "spaced"};
constexpr std::string_view kOpeningUses[] = {"door", "overhead", "window", "plain"};
constexpr std::string_view kHeadings[] = {"west", "north", "east", "south"};
constexpr std::string_view kRodEvents[] = {"floor", "sill", "course-top", "wire", "head",
                                           "lintel-course", "bond-beam", "pour-stop", "top"};
constexpr std::string_view kSoffits[] = {"one-piece", "floor", "form", "nothing-spans"};
constexpr std::string_view kOffers[] = {"move-opening", "move-near-jamb", "move-far-jamb",
                                        "move-head", "change-side", "change-width"};

}  // namespace

std::string_view run_end_name(RunEnd end) { return word(kRunEnds, end); }
std::string_view cut_end_name(CutEnd end) { return word(kCutEnds, end); }
std::string_view bar_reason_name(BarReason reason) { return word(kBarReasons, reason); }
std::string_view opening_use_name(OpeningUse use) { return word(kOpeningUses, use); }
std::string_view heading_name(Heading heading) { return word(kHeadings, heading); }
std::string_view rod_event_name(setout::RodEvent event) { return word(kRodEvents, event); }
std::string_view soffit_name(supply::Soffit soffit) { return word(kSoffits, soffit); }
std::string_view offer_name(OfferWhat what) { return word(kOffers, what); }
std::optional<OfferWhat> offer_named(std::string_view name) {
  const auto found = std::ranges::find(kOffers, name);
  if (found == std::end(kOffers)) return std::nullopt;
  return static_cast<OfferWhat>(found - std::begin(kOffers));
}

}  // namespace stringcourse
