// What several folders tell.
#include "words/english.hpp"

namespace stringcourse::words {
namespace {

constexpr Sentence kSentences[] = {
    {"list-and", " and "},
    {"list-or", " or "},
    {"sentences", "{0}"},
    {"volume-gallons", "{0} gal"},
    {"volume-litres", "{0} litres"},
    {"volume-feet", "{0} ({1} cu ft)"},
    {"volume-bags", "{0} ({1} {1|bag|bags} of 80 lb)"},
};

}  // namespace

std::span<const Sentence> english_common() { return kSentences; }

}  // namespace stringcourse::words
