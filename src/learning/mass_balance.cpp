#include "learning/mass_balance.h"

#include <utility>

namespace brimwright::learning {

MassBalance::Index MassBalance::add(std::optional<Mass> noted, std::optional<MissingNote> note) {
  terms_.push_back({noted, note});
  return terms_.size() - 1;
}

void MassBalance::holds(Index whole, std::vector<Index> parts) {
  sums_.push_back({whole, std::move(parts)});
}

void MassBalance::settle(Mass tolerance) {
  for (bool is_new = true; is_new;) {
    is_new = false;
    for (Sum& sum : sums_) {
      std::size_t unknown = 0;
      Index lacks = 0;
      double its_sign = 1;
      Mass rest;
      each_of(sum, [&](Index mass, double sign) {
        if (terms_[mass].mass)
          rest += sign * *terms_[mass].mass;
        else
          ++unknown, lacks = mass, its_sign = sign;
      });
      if (unknown != 1) continue;
      terms_[lacks].mass = -its_sign * rest;
      sum.is_used = is_new = true;
    }
  }
  check(tolerance);
}

void MassBalance::check(Mass tolerance) {
  for (const Sum& sum : sums_) {
    bool is_whole = true;
    Mass off;
    each_of(sum, [&](Index mass, double sign) {
      is_whole = is_whole && terms_[mass].mass;
      off += sign * terms_[mass].mass.value_or(Mass{});
    });
    if (is_whole && !sum.is_used && abs(off) > tolerance) contradiction_ = off;
  }
  for (const Term& term : terms_)
    if (term.mass && *term.mass < -tolerance) contradiction_ = *term.mass;
}

bool MassBalance::would_tell(Index noted, Index wanted) const {
  std::vector<bool> is_known;
  is_known.reserve(terms_.size());
  for (const Term& term : terms_) is_known.push_back(term.mass.has_value());
  is_known[noted] = true;
  for (bool is_new = true; is_new && !is_known[wanted];) {
    is_new = false;
    for (const Sum& sum : sums_) {
      std::size_t unknown = 0;
      Index lacks = 0;
      each_of(sum, [&](Index mass, double) {
        if (!is_known[mass]) ++unknown, lacks = mass;
      });
      if (unknown == 1) is_known[lacks] = is_new = true;
    }
  }
  return is_known[wanted];
}

std::vector<MissingNote> MassBalance::any_one_of(Index mass) const {
  std::vector<MissingNote> notes;
  if (terms_[mass].note) notes.push_back(*terms_[mass].note);
  for (Index other = 0; other < terms_.size(); ++other)
    if (other != mass && !terms_[other].mass && terms_[other].note && would_tell(other, mass))
      notes.push_back(*terms_[other].note);
  return notes;
}

std::vector<MissingNote> MassBalance::missing() const {
  std::vector<MissingNote> notes;
  for (const Term& term : terms_)
    if (!term.mass && term.note) notes.push_back(*term.note);
  return notes;
}

}  // namespace brimwright::learning
