#pragma once

namespace brimwright::planning {

/// Whether a run's base is mixed for it alone, or as one with the bases of others.
enum class BaseIs { its_own, shared };

}  // namespace brimwright::planning
