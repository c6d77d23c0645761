#include "bond/layout.hpp"

namespace stringcourse {

Layout::Layout() = default;
Layout::Layout(const Layout&) = default;
Layout::Layout(Layout&&) noexcept = default;
Layout& Layout::operator=(const Layout&) = default;
Layout& Layout::operator=(Layout&&) noexcept = default;
Layout::~Layout() = default;

}  // namespace stringcourse
