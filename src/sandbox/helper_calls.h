#pragma once

namespace brimwright::sandbox {

// What a program and its helper agree on. The helper's words are its job, how many bytes it is
// given, how many bytes of memory and milliseconds it may take, and who started it.

inline constexpr int work_input = 0;   // what it is given comes in here
inline constexpr int work_output = 3;  // what it makes goes out here; 1 and 2 lead nowhere

// Exit statuses of a helper.
inline constexpr int work_done = 0;
inline constexpr int work_given_up = 3;
inline constexpr int work_out_of_memory = 4;
inline constexpr int work_not_confined = 5;
inline constexpr int work_done_without_filter = 6;

}  // namespace brimwright::sandbox
