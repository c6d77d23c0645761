#include "job/job.hpp"

namespace stringcourse {

Job::Job() = default;
Job::Job(const Job&) = default;
Job::Job(Job&&) noexcept = default;
Job& Job::operator=(const Job&) = default;
Job& Job::operator=(Job&&) noexcept = default;
Job::~Job() = default;

bool operator==(const Job&, const Job&) = default;

}  // namespace stringcourse
