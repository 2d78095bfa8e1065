#include "web/foreman.h"

#include "desk/answers.h"
#include "web/worker_messages.h"
#include "web/worker_process.h"

#include <poll.h>
#include <sys/eventfd.h>
#include <sys/socket.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <cerrno>
#include <exception>
#include <map>
#include <mutex>
#include <stdexcept>
#include <thread>
#include <utility>
#include <vector>

namespace brimwright::web {

using Clock = std::chrono::steady_clock;
using std::chrono::milliseconds;

namespace {

/// A word across threads that ends a poll().
class Bell {
 public:
  Bell() : descriptor_(::eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK)) {
    if (descriptor_ < 0) throw std::runtime_error("the system gave no event descriptor");
  }
  ~Bell() { ::close(descriptor_); }
  Bell(const Bell&) = delete;
  Bell& operator=(const Bell&) = delete;

  int descriptor() const { return descriptor_; }
  void ring() { ::eventfd_write(descriptor_, 1); }
  void be_silent() {
    eventfd_t rung;
    ::eventfd_read(descriptor_, &rung);
  }

 private:
  int descriptor_;
};

struct Job {
  std::string asked, frame;  // "POST /api/plan", and all of it as it is sent
  Foreman::Answer answer;
  std::optional<Clock::time_point> deadline = {};  // while it is being worked on
  milliseconds limit = {};
  bool was_beside_a_death = false;
};
using Jobs = std::map<std::uint64_t, Job>;  // in the order they came

desk::DeskAnswer broken_down(const std::string& how) {
  return {desk::refusal(
      500, "", "the program stopped while working this out (" + how + ") and was started again",
      "nothing that was saved is lost; change what was typed last, and please report "
      "it")};
}

desk::DeskAnswer too_slow(milliseconds limit) {
  const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(limit).count();
  const std::string words = minutes > 1    ? std::to_string(minutes) + " minutes"
                            : minutes == 1 ? std::string("a minute")
                                           : std::to_string(limit.count()) + " ms";
  return {desk::refusal(500, "", "this took longer than " + words + " and was stopped",
                        "ask for less: a coarser mesh, or fewer embeds to find places for")};
}

desk::DeskAnswer no_worker() {
  return {desk::refusal(
      500, "", "the part of brimwright that plans cannot be started",
      "stop brimwright serve and start it again; if that does not help, please report it")};
}

/// None at first, so that a death costs no time; then longer and longer.
milliseconds pause_after(int idle_deaths) {
  constexpr milliseconds first(100), longest(5000);
  if (idle_deaths == 0) return milliseconds(0);
  return std::min(longest, first * (1 << std::min(idle_deaths - 1, 10)));
}

constexpr int too_many_idle_deaths = 4;

}  // namespace

struct Foreman::Parts {
  Parts(WorkerSettings s, std::string p, std::function<void(const std::string&)> t)
      : settings(std::move(s)), program(std::move(p)), tell(std::move(t)) {}

  WorkerSettings settings;
  std::string program;
  std::function<void(const std::string&)> tell;

  Bell bell;
  std::atomic<bool> is_over = false;
  std::mutex arriving_mutex;
  Jobs arriving;

  // Touched by the thread alone.
  Jobs jobs;
  std::unique_ptr<WorkerProcess> worker;
  FrameReader from_worker;
  std::string to_worker;
  std::size_t sent = 0;  // of to_worker
  int idle_deaths = 0;   // in a row
  Clock::time_point next_start = Clock::now();
  Clock::time_point silent_since = Clock::now();  // with something asked

  std::thread thread;

  void tend() {
    while (!is_over) {
      if (!worker && Clock::now() >= next_start) start_worker();
      wait();
      take_arriving();
      if (!worker) continue;
      try {
        send();
        receive();
        if (const auto late = overdue())
          bury(late);
        else if (is_hanging())
          bury(std::nullopt);
      } catch (const std::exception&) {  // it is dead, or has gone mad
        bury(std::nullopt);
      }
    }
    worker.reset();
  }

  void start_worker() try {
    worker = std::make_unique<WorkerProcess>(program);
    from_worker = {};
    to_worker = encoded(frame_of(settings));
    for (const auto& [number, job] : jobs) to_worker += job.frame;
    sent = 0;
    silent_since = Clock::now();
  } catch (const std::exception& error) {
    worker.reset();
    died_idle(error.what());
  }

  void wait() {
    std::array<pollfd, 2> ends = {{{bell.descriptor(), POLLIN, 0}, {-1, POLLIN, 0}}};
    if (worker) {
      ends[1].fd = worker->socket();
      if (sent < to_worker.size()) ends[1].events |= POLLOUT;
    }
    ::poll(ends.data(), ends.size(), static_cast<int>(until_something_is_due().count()));
    bell.be_silent();
  }

  /// Until there is something to do without being rung for.
  milliseconds until_something_is_due() const {
    auto until = worker ? Clock::time_point::max() : next_start;
    for (const auto& [number, job] : jobs)
      if (job.deadline) until = std::min(until, *job.deadline);
    if (worker && is_asked_in_vain()) until = std::min(until, end_of_silence());
    if (until == Clock::time_point::max()) return milliseconds(-1);
    return std::clamp(std::chrono::ceil<milliseconds>(until - Clock::now()), milliseconds(0),
                      milliseconds(60'000));
  }

  void take_arriving() {
    Jobs arrived;
    {
      const std::scoped_lock alone(arriving_mutex);
      arrived.swap(arriving);
    }
    if (worker)
      for (const auto& [number, job] : arrived) to_worker += job.frame;
    if (jobs.empty()) silent_since = Clock::now();
    jobs.merge(arrived);
    if (!worker && idle_deaths >= too_many_idle_deaths) give_up_on_all();
  }

  void give_up_on_all() {
    for (auto& [number, job] : jobs) job.answer(no_worker());
    jobs.clear();
  }

  void send() {
    while (sent < to_worker.size()) {
      const ssize_t now = ::send(worker->socket(), to_worker.data() + sent, to_worker.size() - sent,
                                 MSG_NOSIGNAL | MSG_DONTWAIT);
      if (now < 0 && errno == EINTR) continue;
      if (now < 0 && errno == EAGAIN) return;
      if (now < 0) return;  // it is dead: what it still said is read first
      sent += static_cast<std::size_t>(now);
    }
    to_worker = {};
    sent = 0;
  }

  void receive() {
    std::array<char, std::size_t{64} << 10> part;
    while (true) {
      const ssize_t got = ::recv(worker->socket(), part.data(), part.size(), MSG_DONTWAIT);
      if (got < 0 && errno == EINTR) continue;
      if (got < 0 && errno == EAGAIN) return;
      if (got <= 0) throw std::runtime_error("it has ended");
      from_worker.add({part.data(), static_cast<std::size_t>(got)});
      while (auto frame = from_worker.next()) hear(*std::move(frame));
    }
  }

  void hear(Frame frame) {
    silent_since = Clock::now();
    const auto at = jobs.find(frame.request);
    if (at == jobs.end()) throw std::runtime_error("it answers what nobody asked");
    Job& job = at->second;
    switch (frame.kind) {
      case Frame::Kind::begun:
        job.limit = limit_of(budget_of(frame));
        job.deadline = Clock::now() + job.limit;
        return;
      case Frame::Kind::put_off:
        job.deadline.reset();
        return;
      default: {
        desk::DeskAnswer answer = answer_of(std::move(frame));
        idle_deaths = 0;
        job.answer(std::move(answer));
        jobs.erase(at);
      }
    }
  }

  milliseconds limit_of(desk::Budget budget) const {
    return budget == desk::Budget::quick ? settings.limits.quick : settings.limits.patient;
  }

  std::optional<std::uint64_t> overdue() const {
    const auto now = Clock::now();
    for (const auto& [number, job] : jobs)
      if (job.deadline && *job.deadline <= now) return number;
    return std::nullopt;
  }

  bool is_asked_in_vain() const { return !jobs.empty() && those_begun().empty(); }
  Clock::time_point end_of_silence() const { return silent_since + settings.limits.quick; }
  /// It neither begins what it is asked nor works on anything else.
  bool is_hanging() const { return is_asked_in_vain() && Clock::now() >= end_of_silence(); }

  /// The worker is dead or has to be, of the request that was late or of whatever it can tell: who
  /// gets no answer because of it, and who waits for the next worker.
  void bury(std::optional<std::uint64_t> late) {
    const WorkerProcess::End end = worker->end();
    worker.reset();
    const std::vector<std::uint64_t> begun = those_begun();
    if (begun.empty()) return died_idle(words_for_status(end.status));
    idle_deaths = 0;
    next_start = Clock::now();
    const auto culprit = late ? late : end.request;
    const bool is_known = culprit && std::count(begun.begin(), begun.end(), *culprit) > 0;
    for (const std::uint64_t number : begun) {
      Job& job = jobs.at(number);
      job.deadline.reset();
      const bool was_beside_a_death = std::exchange(job.was_beside_a_death, true);
      const bool is_innocent = is_known && number != *culprit && !was_beside_a_death;
      if (is_innocent) continue;
      if (late == number)
        refuse(number, "it took too long", too_slow(job.limit));
      else
        refuse(number, words_for_status(end.status), broken_down(words_for_status(end.status)));
    }
  }

  std::vector<std::uint64_t> those_begun() const {
    std::vector<std::uint64_t> begun;
    for (const auto& [number, job] : jobs)
      if (job.deadline) begun.push_back(number);
    return begun;
  }

  void refuse(std::uint64_t number, const std::string& why, desk::DeskAnswer refusal) {
    const auto at = jobs.find(number);
    say("of " + at->second.asked + ": " + why);
    at->second.answer(std::move(refusal));
    jobs.erase(at);
  }

  void died_idle(const std::string& how) {
    ++idle_deaths;
    next_start = Clock::now() + pause_after(idle_deaths);
    if (idle_deaths <= too_many_idle_deaths) say("before it had begun anything: " + how);
    if (idle_deaths >= too_many_idle_deaths) give_up_on_all();
  }

  void say(const std::string& what) const {
    if (tell) tell("a worker ended, " + what);
  }
};

Foreman::Foreman(WorkerSettings settings, std::string program,
                 std::function<void(const std::string&)> tell)
    : parts_(std::make_unique<Parts>(std::move(settings), std::move(program), std::move(tell))) {
  // One thread starts every worker: a worker dies with the thread that started it.
  parts_->thread = std::thread([parts = parts_.get()] { parts->tend(); });
}

Foreman::~Foreman() { stop(); }

void Foreman::give(desk::DeskRequest request, Answer answer) {
  const std::uint64_t number = request.number;
  Job job{.asked = request.method + " " + request.path, .frame = {}, .answer = std::move(answer)};
  job.frame = encoded(frame_of(std::move(request)));
  {
    const std::scoped_lock alone(parts_->arriving_mutex);
    parts_->arriving.emplace(number, std::move(job));
  }
  parts_->bell.ring();
}

void Foreman::stop() {
  parts_->is_over = true;
  parts_->bell.ring();
  if (parts_->thread.joinable()) parts_->thread.join();
}

}  // namespace brimwright::web
