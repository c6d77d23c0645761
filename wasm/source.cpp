#include "wasm/source.hpp"

#include <utility>
#include <variant>

#include "job/read.hpp"
#include "job/write.hpp"
#include "walls/resolve.hpp"
#include "wasm/reply.hpp"
#include "words/language.hpp"

namespace stringcourse::border {
namespace {

Sourced start_of(const Request& request) {
  if (const Measures* measures = std::get_if<Measures>(&request.from)) {
    const auto job = begun_job(*measures);
    if (!job) return std::unexpected(refused(job.error(), ""));
    return read_back(*job);
  }
  auto job = read_job(std::get<std::string>(request.from));
  if (!job) return std::unexpected(refused(job.error(), ""));
  return Source{*std::move(job)};
}

Sourced with_edits(Source source, const std::vector<Edit>& edits) {
  if (edits.empty()) return source;
  Job job = std::move(source.job);
  for (const Edit& edit : edits) {
    const auto building = resolve(job);
    if (!building) return std::unexpected(refused(building.error(), write_job(job)));
    auto changed = edited(job, *building, edit);
    if (!changed) return std::unexpected(bad_request(words::told(changed.error(), {job.tape})));
    job = *std::move(changed);
  }
  return read_back(job);
}

}  // namespace

Sourced read_back(const Job& job) {
  std::string document = write_job(job);
  auto again = read_job(document);
  if (!again) return std::unexpected(refused(again.error(), document));
  return Source{*std::move(again), std::move(document)};
}

Sourced source_of(const Request& request) {
  Sourced source = start_of(request);
  if (!source) return source;
  std::optional<Job> before;
  if (request.moving && !request.edits.empty()) before = source->job;
  source = with_edits(*std::move(source), request.edits);
  if (source) source->before = std::move(before);
  return source;
}

}  // namespace stringcourse::border
