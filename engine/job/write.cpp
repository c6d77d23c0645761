#include "job/write.hpp"

#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "job/enum_names.hpp"
#include "job/json_text.hpp"
#include "job/tables.hpp"
#include "measure/notation.hpp"

namespace stringcourse {
namespace {

/// Walks the field tables and writes what it finds.
class JobWriter {
 public:
  explicit JobWriter(Tape tape) : tape_(tape) {}

  void write(bool value) { json_.truth(value); }
  void write(int value) { json_.whole(value); }
  void write(const std::string& value) { json_.text(value); }
  void write(Length value) { json_.text(exact_text(value, tape_)); }
  void write(const StatedLength& value) {
    json_.text(exact_text(value.length, tape_) + (value.basis == Basis::Actual ? " actual" : ""));
  }
  template <class Enum>
    requires std::is_enum_v<Enum>
  void write(Enum value) {
    json_.text(enum_name(value));
  }
  template <class Entry>
  void write(const std::vector<Entry>& entries) {
    json_.open_list();
    for (const Entry& entry : entries) write(entry);
    json_.close_list();
  }
  template <class Value>
  void write(const std::optional<Value>& value) {
    write(*value);
  }
  template <HasTable Struct>
  void write(const Struct& value) {
    json_.open_object();
    const Struct untouched{};
    for_each_field<Struct>(
        [&](const auto& field) { write_field(field.name, field.need, value.*field.member, untouched.*field.member); });
    json_.close_object();
  }

  /// One piece of code for all fields of one type.
  template <class Member>
  [[gnu::noinline]] void write_field(std::string_view name, Need need, const Member& member, const Member& untouched) {
    if (need == Need::Optional && member == untouched) return;
    json_.key(name);
    write(member);
  }

  std::string finish() && { return std::move(json_).finish(); }

 private:
  JsonText json_;
  Tape tape_;
};

}  // namespace

namespace {

template <class Part>
std::string written(const Part& part, Tape tape) {
  JobWriter writer(tape);
  writer.write(part);
  return std::move(writer).finish();
}

}  // namespace

std::string write_job(const Job& job) { return written(job, job.tape); }

std::string write_entry(const Reading& entry, Tape tape) { return written(entry, tape); }

std::string write_entry(const LaidEntry& entry, Tape tape) { return written(entry, tape); }

}  // namespace stringcourse
