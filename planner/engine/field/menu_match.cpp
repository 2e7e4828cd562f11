#include "planner/engine/field/menu_match.hpp"

#include <algorithm>

namespace landwidth {

MenuMatch::MenuMatch(const ShotMenu& known, const ShotMenu& now) : now_(now) {
    for (const Stance stance : all_stances) {
        const auto index = static_cast<std::size_t>(stance);
        const std::vector<ShotOption>& options = now.options(stance);
        is_new_[index].assign(options.size(), true);
        for (const ShotOption& old : known.options(stance)) {
            const auto same = std::ranges::find_if(options, [&](const ShotOption& option) {
                return option.club == old.club && option.swing == old.swing;
            });
            const auto place = same - options.begin();
            const bool gone = same == options.end();
            now_of_known_[index].push_back(gone ? std::int16_t{-1} : static_cast<std::int16_t>(place));
            if (!gone) is_new_[index][static_cast<std::size_t>(place)] = false;
        }
    }
}

Action MenuMatch::now(Stance stance, Action known) const {
    if (known.option < 0) return known;
    return {now_of_known_[static_cast<std::size_t>(stance)][static_cast<std::size_t>(known.option)],
            known.turn};
}

bool MenuMatch::is_new(Stance stance, const ShotOption& option) const {
    const auto place = &option - now_.options(stance).data();
    return is_new_[static_cast<std::size_t>(stance)][static_cast<std::size_t>(place)];
}

}  // namespace landwidth
