#include "whole_process.h"

#include <fcntl.h>
#include <spawn.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstring>
#include <fstream>
#include <stdexcept>
#include <system_error>

extern "C" char** environ;

namespace {

void must_be_nought(int error, const std::string& what) {
  if (error != 0) throw std::runtime_error(what + ": " + std::strerror(error));
}

/// A started program, its output thrown away.
pid_t started(std::string program, std::vector<std::string> words) {
  std::vector<char*> arguments = {program.data()};
  for (auto& word : words) arguments.push_back(word.data());
  arguments.push_back(nullptr);
  posix_spawn_file_actions_t actions;
  must_be_nought(posix_spawn_file_actions_init(&actions), program);
  must_be_nought(posix_spawn_file_actions_addopen(&actions, 1, "/dev/null", O_WRONLY, 0), program);
  pid_t child = 0;
  const int error =
      posix_spawn(&child, program.c_str(), &actions, nullptr, arguments.data(), environ);
  posix_spawn_file_actions_destroy(&actions);
  must_be_nought(error, program);
  return child;
}

}  // namespace

Spent spent_by(const std::string& program, const std::vector<std::string>& words) {
  const auto start = std::chrono::steady_clock::now();
  const pid_t child = started(program, words);
  int status = 0;
  rusage usage{};
  if (wait4(child, &status, 0, &usage) != child)
    throw std::runtime_error(program + ": " + std::strerror(errno));
  const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
  if (status != 0) {
    std::string line = program;
    for (const auto& word : words) line += " " + word;
    throw std::runtime_error("failed: " + line);
  }
  // A program begins with the peak of who started it.
  rusage own{};
  must_be_nought(getrusage(RUSAGE_SELF, &own) == 0 ? 0 : errno, "getrusage");
  const bool is_its_own = usage.ru_maxrss > own.ru_maxrss;
  return {took.count(), is_its_own ? static_cast<double>(usage.ru_maxrss) / 1024 : 0};
}

void write_file(const std::filesystem::path& path, const std::string& bytes) {
  std::ofstream out(path, std::ios::binary);
  out << bytes;
  out.close();
  if (!out) throw std::runtime_error(path.string() + " could not be written");
}

ScratchFolder::ScratchFolder(const std::string& name)
    : path_(std::filesystem::temp_directory_path() / (name + "_" + std::to_string(getpid()))) {
  std::filesystem::create_directories(path_);
}

ScratchFolder::~ScratchFolder() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}
