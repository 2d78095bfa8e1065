#pragma once

#include "learning/figures.h"

#include <cstdint>
#include <map>
#include <random>
#include <vector>

// Studios that chance makes, of which all is known: what their moulds, formulas, vessels and hands
// really do, and the notes of batches made in them. Written from the words (what is made goes into
// pieces, stays in vessels or is left over) and not from the code that learns of them.

struct Studio {
  /// How the notes come about.
  struct Notes {
    double missing = 0.1;    // probability of each
    bool has_cups = true;    // a cup is ever weighed
    bool are_alike = false;  // notes without any noise
    double slips = 0;        // probability of a cup read with its tare
    std::uint64_t seed = 1;
    int batches = 40;
  };

  std::map<brimwright::learning::FigureId, double> truth;  // in mm, g, g/ml, ml, minutes, or of one
  std::vector<brimwright::learning::BatchFacts> batches;
};

/// A studio of three moulds, three formulas, two toppings by two hands.
Studio any_studio(const Studio::Notes& notes);

/// The number of a value in the same units.
double number_of(const brimwright::learning::Value& value);
