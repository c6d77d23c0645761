#pragma once
// Writing of a job document, and the schema of such documents.
#include <string>

#include "job/job.hpp"

namespace stringcourse {

/// The document of this job: fields in a fixed order, two spaces of indent, a newline at the end; the same bytes as a
/// browser's JSON.stringify(job, null, 2) plus newline. Lengths are written exactly, in the job's own tape. A field
/// that has its default is left out, unless it must be there or helps the reader (see Need in job/field_table.hpp).
/// read_job of it gives an equal job, whatever is in the texts, provided they are UTF-8 and keep read_job's limits.
[[nodiscard]] std::string write_job(const Job& job);

/// One entry of a log, alone: equal entries give equal texts and different ones different texts.
[[nodiscard]] std::string write_entry(const Reading& entry, Tape tape);
[[nodiscard]] std::string write_entry(const LaidEntry& entry, Tape tape);

/// JSON Schema 2020-12 of a job document, made from the same field tables as reader and writer.
/// docs/schema/job.schema.json is its output.
[[nodiscard]] std::string job_schema();

}  // namespace stringcourse
