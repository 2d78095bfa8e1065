#include "chemistry/fat_search.h"

#include "chemistry/inci_data.h"
#include "chemistry/name_words.h"
#include "units/fields.h"
#include "units/printing.h"

#include <algorithm>
#include <map>
#include <mutex>
#include <set>
#include <string>
#include <unordered_map>
#include <utility>

namespace brimwright::embedded {
std::string_view fats_json();
}

namespace brimwright::chemistry {
namespace {

using Words = std::set<std::string>;
using Found = std::vector<const Fat*>;

/// The words of `name` that `drops` leaves; all of them where it leaves none.
template <class Drops>
Words words_without(std::string_view name, const Drops& drops) {
  const auto all = words_of(name);
  Words telling;
  for (const std::string& word : all)
    if (!drops(word)) telling.insert(word);
  return telling.empty() ? Words(all.begin(), all.end()) : telling;
}

/// "92 Degree Coconut Oil, organic" and "coconut 92" -> {92, coconut}.
Words plain_key_of(std::string_view name) { return words_without(name, tells_how_made); }

/// With "extra" and "virgin", which no pomace oil is.
Words key_of(std::string_view name) {
  return words_without(name, [](const std::string& word) {
    return tells_how_made(word) && word != "extra" && word != "virgin";
  });
}

/// Words that makers use for more than one fat, with the ids of those.
using SharedNames = std::map<Words, std::vector<std::string>>;

const SharedNames& shared_names() {
  static const SharedNames read = [] {
    SharedNames names;
    const Fields file = Fields::parse(embedded::fats_json(), "data/fats.json");
    for (const Fields& word : file.objects("shared_names"))
      for (const std::string& name : word.texts("names"))
        names[key_of(name)] = word.texts("may_be");
    return names;
  }();
  return read;
}

std::vector<std::string> names_of(const Fat& fat) {
  std::vector<std::string> names = {fat.id, fat.name, fat.inci};
  names.insert(names.end(), fat.also_called.begin(), fat.also_called.end());
  return names;
}

template <class Fits>
Found those_of(const FatTable& table, const Fits& fits) {
  Found found;
  for (const Fat& fat : table.fats())
    if (fits(fat)) found.push_back(&fat);
  return found;
}

std::vector<Words> made_keys(const Fat& fat) {
  std::vector<Words> keys;
  for (const std::string& name : names_of(fat)) keys.push_back(key_of(name));
  return keys;
}

/// Those of shipped fats are made once.
std::vector<Words> keys_of(const Fat& fat) {
  static const auto shipped = [] {
    std::map<std::string, std::vector<Words>> all;
    for (const Fat& one : shipped_fats()) all[one.id] = made_keys(one);
    return all;
  }();
  const auto at = shipped.find(fat.id);
  if (at == shipped.end()) return made_keys(fat);
  if (!fat.is_users_own) return at->second;
  auto keys = made_keys(fat);  // and the names of the shipped one that it stands in place of
  keys.insert(keys.end(), at->second.begin(), at->second.end());
  return keys;
}

template <class Fits>
bool has_key(const Fat& fat, const Fits& fits) {
  const auto keys = keys_of(fat);
  return std::any_of(keys.begin(), keys.end(), fits);
}

template <class Fits>
bool has_name(const Fat& fat, const Fits& fits) {
  const auto names = names_of(fat);
  return std::any_of(names.begin(), names.end(), fits);
}

/// All words of `some` are in `all`.
bool are_in(const Words& some, const Words& all) {
  return std::includes(all.begin(), all.end(), some.begin(), some.end());
}

/// Words for a kind of fat or for where it is from, which tell of no one fat.
bool tells_a_kind(const std::string& word) {
  static const Words such = {"butter", "fat", "wax", "acid", "seed", "kernel", "nut", "germ"};
  return such.contains(word);
}

/// "low erucic" -> rapeseed: what has those words in one of its names, beside others.
Found named_with(const std::string& name, const FatTable& table) {
  const Words given = key_of(name);
  if (std::all_of(given.begin(), given.end(), tells_a_kind)) return {};
  return those_of(table, [&](const Fat& fat) {
    return has_key(fat, [&](const Words& key) { return are_in(given, key); });
  });
}

/// Whether a word of `name` stands in names of other fats, but in none of `fat`: "coconut butter"
/// is near to "cocoa butter" in letters alone.
bool names_another(const std::string& name, const Fat& fat, const FatTable& table) {
  const Words given = key_of(name);
  return std::any_of(given.begin(), given.end(), [&](const std::string& word) {
    const auto has_word = [&](const Fat& f) {
      return has_key(f, [&](const Words& key) { return key.contains(word); });
    };
    return !tells_a_kind(word) && !has_word(fat) && !those_of(table, has_word).empty();
  });
}

std::string spelt(std::string_view name) {
  std::string all;
  for (const std::string& word : words_of(name)) all += (all.empty() ? "" : " ") + word;
  return all.ends_with(" oil") ? all.substr(0, all.size() - 4) : all;
}

Found nearest(const std::string& name, const FatTable& table) {
  std::vector<std::string> names;
  for (const Fat& fat : table.fats())
    for (const std::string& other : names_of(fat)) names.push_back(spelt(other));
  const auto near = nearest_name(spelt(name), names);
  if (!near) return {};
  Found found = those_of(table, [&](const Fat& fat) {
    return has_name(fat, [&](const std::string& other) { return spelt(other) == *near; });
  });
  std::erase_if(found, [&](const Fat* fat) { return names_another(name, *fat, table); });
  return found;
}

std::string in_words(const Fat& fat) {
  return "\"" + fat.id + "\" (" + fat.name + ", " +
         trimmed(fat.saponification.typical.mg_koh_per_g(), 1) + " mg/g)";
}

std::string asked(const Found& found) {
  std::string all = "it may be ";
  for (std::size_t i = 0; i < found.size(); ++i)
    all += (i == 0 ? "" : i + 1 == found.size() ? " or " : ", ") + in_words(*found[i]);
  return all + "; each takes lye of its own, so name the one that you have";
}

/// Those that share the word, or else those that have that name.
Found with_key(const Words& key, const std::string& inci, const FatTable& table) {
  if (key.empty()) return {};
  if (const auto shared = shared_names().find(key); shared != shared_names().end())
    return those_of(table, [&](const Fat& fat) {
      return std::count(shared->second.begin(), shared->second.end(), fat.id) > 0;
    });
  return those_of(table, [&](const Fat& fat) {
    return inci_key(fat.inci) == inci ||
           has_key(fat, [&](const Words& other) { return other == key; });
  });
}

Found found_in(std::string_view name, const FatTable& table) {
  if (const Fat* fat = table.find(name)) return {fat};
  const auto words = words_of(name);
  Found literal = those_of(table, [&](const Fat& fat) {
    const auto is_it = [&](const std::string& other) { return words_of(other) == words; };
    return is_it(fat.name) || std::any_of(fat.also_called.begin(), fat.also_called.end(), is_it);
  });
  if (literal.size() == 1) return literal;
  const Found found = with_key(key_of(name), inci_key(name), table);
  return !found.empty() ? found : with_key(plain_key_of(name), inci_key(name), table);
}

/// What names stand for in the shipped table. A studio's list of packs has the same ones again and
/// again, for each run that is planned.
class Remembered {
 public:
  Found fats(std::string_view name) {
    std::string key(name);
    {
      const std::lock_guard lock(mutex_);
      if (const auto known = found_.find(key); known != found_.end()) return known->second;
    }
    Found found = found_in(name, shipped_table());
    const std::lock_guard lock(mutex_);
    if (found_.size() >= most_names) found_.clear();
    found_[std::move(key)] = found;
    return found;
  }

 private:
  static constexpr std::size_t most_names = 5'000;

  std::mutex mutex_;
  std::unordered_map<std::string, Found> found_;
};

}  // namespace

bool tells_how_made(const std::string& word) {
  static const Words such = {
      "oil",      "refined", "unrefined", "raw",        "crude",      "pure",     "organic",  "bio",
      "cold",     "pressed", "expeller",  "deodorised", "deodorized", "bleached", "filtered", "rbd",
      "cosmetic", "food",    "grade",     "degree",     "degrees",    "deg",      "f",        "my",
      "own",      "our",     "the",       "of",         "extra",      "virgin"};
  return such.contains(word);
}

std::vector<const Fat*> fats_named(std::string_view name, const FatTable& table) {
  static Remembered remembered;
  constexpr std::size_t most_letters = 200;
  const bool is_usual = &table == &shipped_table() && name.size() <= most_letters;
  return is_usual ? remembered.fats(name) : found_in(name, table);
}

std::string which_fat(const std::string& name, const FatTable& table) {
  constexpr std::size_t most_told = 6;
  Found found = fats_named(name, table);
  if (found.empty()) found = named_with(name, table);
  if (found.empty()) found = nearest(name, table);
  if (found.empty() || found.size() > most_told) return "";
  return found.size() == 1 ? "did you mean \"" + found.front()->id + "\"?" : asked(found);
}

}  // namespace brimwright::chemistry
