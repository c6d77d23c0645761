#include "document/calendar.hpp"

#include <string_view>

#include "job/write.hpp"
#include "measure/characters.hpp"
#include "measure/digits.hpp"

namespace stringcourse {
namespace {

/// One content line, folded before it is longer than 75 bytes, never inside a character.
void add_line(std::string& text, std::string_view line) {
  constexpr std::size_t kMost = 75;
  std::size_t used = 0;
  for (std::size_t at = 0; at < line.size();) {
    const std::size_t size = character_at(line, at).size();
    if (used + size > kMost) {
      text += "\r\n ";
      used = 1;
    }
    text += line.substr(at, size);
    used += size, at += size;
  }
  text += "\r\n";
}

/// A text value: what the format gives a meaning is escaped.
std::string escaped(std::string_view text) {
  std::string all;
  for (const char c : text) {
    if (c == '\\' || c == ';' || c == ',') all += '\\';
    if (c == '\n') all += "\\n";
    else if (c != '\r') all += c;
  }
  return all;
}

std::string plain_date(Date date) {
  std::string text = date_text(date);
  std::erase(text, '-');
  return text;
}

/// The same job has the same events; another one's are others (FNV-1a).
std::string job_key(const Job& job) {
  std::uint64_t key = 14'695'981'039'346'656'037U;
  for (const char c : write_job(job)) key = (key ^ static_cast<unsigned char>(c)) * 1'099'511'628'211U;
  return number_text(key);
}

std::string works_of(const Answer& answer, const WorkDay& day, const words::Reader& reader) {
  std::string text;
  for (const std::int32_t task : day.tasks) {
    if (!text.empty()) text += "; ";
    text += words::told(task_said_on(answer, day, task), reader);
  }
  return text;
}

/// What stands over its limits at the end of a day, each on a line of its own.
std::string nights_of(const Answer& answer, const WorkDay& day, const words::Reader& reader) {
  std::string text;
  for (const Fact& one : {brace_said(answer, day), tall_said(answer, day)}) {
    if (!one.empty()) text += "\n" + words::told(one, reader);
  }
  return text;
}

}  // namespace

std::string calendar_text(const Answer& answer, const words::Language& language) {
  const std::vector<WorkDay>& days = answer.programme.days;
  if (days.empty() || !days.front().date) return {};
  const words::Reader reader{answer.building.tape, language};
  const std::string key = job_key(answer.job), stamp = plain_date(*days.front().date) + "T000000Z";
  std::string text;
  for (const std::string_view line : {"BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Stringcourse//Days//EN"})
    add_line(text, line);
  for (const WorkDay& day : days) {
    const Date next{day.date->day + 1};
    add_line(text, "BEGIN:VEVENT");
    add_line(text, "UID:" + key + "-" + number_text(day.number) + "@stringcourse");
    add_line(text, "DTSTAMP:" + stamp);
    add_line(text, "DTSTART;VALUE=DATE:" + plain_date(*day.date));
    add_line(text, "DTEND;VALUE=DATE:" + plain_date(next));
    const Fact summary = fact("day-summary", {answer.job.name, day.number, day.laid});
    add_line(text, "SUMMARY:" + escaped(words::told(summary, reader)));
    add_line(text, "DESCRIPTION:" + escaped(works_of(answer, day, reader) + nights_of(answer, day, reader)));
    add_line(text, "END:VEVENT");
  }
  add_line(text, "END:VCALENDAR");
  return text;
}

}  // namespace stringcourse
