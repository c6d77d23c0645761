#pragma once
// Every code that the job reader refuses with. Other folders have codes of their own for what they find.
#include <string_view>

namespace stringcourse::code {

inline constexpr std::string_view kTooLarge = "too-large";          // the document has too many bytes or values
inline constexpr std::string_view kNotUtf8 = "not-utf-8";           // the bytes are no UTF-8 text
inline constexpr std::string_view kNotJson = "not-json";            // the text breaks off or goes wrong as JSON
inline constexpr std::string_view kTooDeep = "too-deep";            // lists and objects nested too deep
inline constexpr std::string_view kNewerVersion = "newer-version";  // written by a later version of this tool
inline constexpr std::string_view kUnknownField = "unknown-field";
inline constexpr std::string_view kDuplicateField = "duplicate-field";  // one field twice in one object
inline constexpr std::string_view kMissingField = "missing-field";
inline constexpr std::string_view kWrongType = "wrong-type";        // a number where a text belongs, and the like
inline constexpr std::string_view kNotALength = "not-a-length";     // the text cannot be read as a length
inline constexpr std::string_view kNotAForce = "not-a-force";       // the text cannot be read as a force or a line's weight
inline constexpr std::string_view kUnknownName = "unknown-name";    // no name of the list that belongs here
inline constexpr std::string_view kOutOfRange = "out-of-range";     // a number or length beyond its limits
inline constexpr std::string_view kTooLong = "too-long";            // a text with too many characters
inline constexpr std::string_view kEmptyText = "empty-text";        // a name that must not be empty
inline constexpr std::string_view kControlCharacter = "control-character";
inline constexpr std::string_view kTooMany = "too-many";            // a list with too many entries; entries not read
inline constexpr std::string_view kListOrder = "list-order";        // doubled or not rising where it must be
inline constexpr std::string_view kChooseOne = "choose-one";        // none or several of fields that exclude each other
inline constexpr std::string_view kNameTwice = "name-twice";        // two things with one name
inline constexpr std::string_view kSeriesUneven = "series-uneven";  // an own series whose sizes do not fit together
inline constexpr std::string_view kCellOutside = "cell-outside";    // a cell that is not inside its unit, or not rising

inline constexpr std::string_view kBelongsTogether = "belongs-together";  // one of two things that make no sense alone

/// All of them, for tests and documents.
inline constexpr std::string_view kAllReaderCodes[] = {
    kTooLarge,  kNotUtf8,     kNotJson,    kTooDeep,   kNewerVersion,     kUnknownField, kDuplicateField,
    kMissingField, kWrongType, kNotALength, kNotAForce, kUnknownName, kOutOfRange,    kTooLong,      kEmptyText,
    kControlCharacter, kTooMany, kListOrder, kChooseOne, kNameTwice,      kSeriesUneven, kCellOutside, kBelongsTogether};

}  // namespace stringcourse::code
