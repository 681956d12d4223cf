//! The figures of a step at the bench, found in the plan, the run and the batch.

use std::num::NonZeroU32;

use super::bench_course::Course;
use super::bench_step::BenchStep;
use super::day_results::DayResults;
use super::input::DayInput;
use super::planned_dough::planned_dough;
use super::weighed_formula::{as_weighed, asked, settled};
use super::which_rise::WhichRise;
use crate::engine::batch::{Divided, Scaled, divide};
use crate::engine::formula::{Form, Formula, LineAt, Part, PartKind};
use crate::engine::plan::{Step, StepAt, StepKind, Timed};
use crate::engine::quantity::{Instant, Mass, Minutes};
use crate::results::batch::{scale, tins};
use crate::results::chocolate;
use crate::results::heat::{DoughOffset, dough_offset};

/// The figures of a step; `None` where the plan does not have it.
#[must_use]
pub fn bench_step(input: &DayInput, results: &DayResults, at: StepAt) -> Option<BenchStep> {
    let (step, timed) = results.find(at)?;
    let of = Asked {
        input,
        results,
        at,
        step,
        timed,
    };
    let found = of
        .of_a_part()
        .or_else(|| of.of_the_dough())
        .or_else(|| of.of_the_pieces())
        .or_else(|| of.of_the_oven());
    Some(found.unwrap_or(BenchStep::Plain(at.work)))
}

struct Asked<'a> {
    input: &'a DayInput<'a>,
    results: &'a DayResults,
    at: StepAt,
    step: &'a Step,
    timed: &'a Timed,
}

impl Asked<'_> {
    fn of_a_part(&self) -> Option<BenchStep> {
        let part = usize::from(self.at.of);
        let work = self.at.work;
        if work == StepKind::Scald {
            Some(self.scald(part))
        } else if work == StepKind::CoolPaste {
            let plan = self.results.run.cooling(part).map(|cooling| cooling.plan);
            let way = plan.and_then(|plan| Some((plan.way, plan.deep().ok()?)));
            Some(BenchStep::CoolPaste { way })
        } else if work == StepKind::MixPreferment {
            let stand = StepAt {
                work: StepKind::StandPreferment,
                of: self.at.of,
            };
            let stands = self.results.find(stand).map(|(_, timed)| timed.lasts);
            let stands = stands.unwrap_or(Minutes::ZERO);
            Some(BenchStep::MixPreferment { stands })
        } else if matches!(work, StepKind::ChillPaste | StepKind::ChillPreferment) {
            let until = self.comes_out();
            Some(BenchStep::IntoFridge { part, until })
        } else if work == StepKind::StandPreferment {
            Some(BenchStep::Stand {
                room: self.input.kitchen.room,
                until: self.ends(),
            })
        } else if work == StepKind::WarmUp {
            let minutes = self.timed.lasts;
            Some(BenchStep::WarmUp { minutes })
        } else {
            None
        }
    }

    fn scald(&self, part: usize) -> BenchStep {
        let made = self.weighed_in();
        let own = made.and_then(|made| made.parts.get(part));
        let lines = own.map(|own| own.lines.as_slice()).unwrap_or_default();
        let poured = || {
            lines
                .iter()
                .enumerate()
                .filter(|(_, line)| line.is_liquid())
        };
        BenchStep::Scald {
            liquid: poured().map(|(_, line)| line.mass).sum(),
            liquids: poured().map(|(line, _)| LineAt { part, line }).collect(),
            flours: lines
                .iter()
                .filter(|line| line.is_flour() && line.mass > Mass::ZERO)
                .count(),
        }
    }

    fn of_the_dough(&self) -> Option<BenchStep> {
        let sheet = self.input.sheet;
        if self.at.work == StepKind::Mix {
            let dough = planned_dough(self.input, self.results);
            let steps = self.results.plan.steps();
            let minutes = sheet.heat.mixing;
            return Some(BenchStep::Mix {
                butter_later: steps.iter().any(|one| one.at.work == StepKind::ButterIn),
                bowl: sheet.heat.mixing_bowl,
                minutes: minutes.unwrap_or(self.input.kitchen.mixer.minutes),
                dough,
                wished: Some(sheet.heat.dough)
                    .filter(|wished| dough_offset(dough, *wished) != DoughOffset::AsWanted),
            });
        }
        if self.at.work == StepKind::ButterIn {
            let dough = planned_dough(self.input, self.results);
            return Some(BenchStep::ButterIn { dough });
        }
        let rises = [StepKind::Bulk, StepKind::Proof, StepKind::LaterProof];
        let rise = rises.contains(&self.at.work).then_some(self.at.work)?;
        let which = if rise == StepKind::Bulk {
            WhichRise::Bulk
        } else {
            WhichRise::Proof
        };
        let settings = self.input.rise_settings();
        let place = match which {
            WhichRise::Bulk => settings.bulk_place,
            WhichRise::Proof => settings.proof_place,
        };
        let begins = self.timed.begins;
        let (soonest, latest) = self
            .step
            .over_between
            .unwrap_or((self.timed.lasts, self.timed.lasts));
        Some(BenchStep::Rise {
            which,
            at: place.unwrap_or(self.input.kitchen.room),
            between: [begins.later(soonest), begins.later(latest)],
        })
    }

    fn of_the_pieces(&self) -> Option<BenchStep> {
        let work = self.at.work;
        if work == StepKind::Rest {
            let minutes = self.timed.lasts;
            return Some(BenchStep::Rest { minutes });
        }
        let scaled = scale(self.input.sheet).ok()?;
        let pieces = scaled.pieces.count;
        if work == StepKind::Divide {
            return Some(BenchStep::Divide {
                pieces: scaled.pieces,
                divided: self.divided(scaled.needed, pieces),
            });
        }
        if work == StepKind::Round {
            return Some(BenchStep::Round { pieces });
        }
        if work == StepKind::Shape {
            return Some(BenchStep::Shape {
                pieces,
                filling: self.filling(&scaled),
                stays: scaled.losses.topping,
            });
        }
        if work == StepKind::Tin {
            let found = tins::of(self.input.sheet, &scaled);
            let grid = found.as_ref().and_then(|tins| tins.layout.as_ref().ok());
            let grid = grid.and_then(|layout| layout.grid);
            return Some(BenchStep::Tin {
                pieces,
                tins: found.map(|tins| tins.used.tins.count),
                rows: grid.map(|grid| (grid.rows, grid.columns)),
            });
        }
        let all = self.of_kind(PartKind::Topping);
        if work == StepKind::Melt {
            return Some(BenchStep::Melt { all });
        }
        let stays = scaled.losses.topping;
        (work == StepKind::Drizzle).then_some(BenchStep::Drizzle { all, stays })
    }

    /// The dough that was noted on the bench, else that of the batch with what was weighed otherwise,
    /// as the scale divides it.
    fn divided(&self, needed: Mass, pieces: NonZeroU32) -> Option<Divided> {
        let noted = self.input.bench.and_then(|bench| bench.bake.noted.bowl);
        let dough = noted.map_or_else(|| self.in_it(needed), |bowl| bowl.after);
        let division = self.input.rounded?.weighing.main;
        // The pieces add up to what the scale shows of it, as the batch does.
        divide(division.nearest(dough), pieces, division).ok()
    }

    /// A mass of dough with its share of what was weighed otherwise.
    fn in_it(&self, needed: Mass) -> Mass {
        let there = || {
            let (rounded, bench) = (self.input.rounded?, self.input.bench?);
            let asked = asked(rounded);
            let actual = as_weighed(&asked, &settled(rounded, bench));
            let dough = |formula: &Formula| -> Mass {
                let lines = formula.dough_parts().flat_map(|part| &part.lines);
                lines.map(|line| Form::AsMade.mass(line)).sum()
            };
            let times = dough(&actual).grams() / dough(&asked).grams();
            Mass::from_grams(needed.grams() * times).ok()
        };
        there().unwrap_or(needed)
    }

    /// What goes inside each piece, as the chocolate page has it: without what stays in bag and bowl.
    fn filling(&self, scaled: &Scaled) -> Option<(Mass, Option<LineAt>)> {
        let parts = self.input.sheet.formula.parts.iter().enumerate();
        let fillings = || {
            parts
                .clone()
                .filter(|(_, part)| part.kind == PartKind::Filling)
        };
        let each = fillings().filter_map(|(part, _)| chocolate::filling(scaled, part)?.ok());
        let each: Mass = each.map(|fill| fill.each).sum();
        let mut lines = fillings()
            .flat_map(|(part, own)| (0..own.lines.len()).map(move |line| LineAt { part, line }));
        let first = lines.next();
        let only = first.filter(|_| lines.next().is_none());
        (each > Mass::ZERO).then_some((each, only))
    }

    fn of_kind(&self, kind: PartKind) -> Mass {
        let parts = self.weighed_in().into_iter().flat_map(|made| &made.parts);
        let own = parts.filter(|part| part.kind == kind);
        own.map(Part::mass).sum()
    }

    fn of_the_oven(&self) -> Option<BenchStep> {
        let baking = self.results.run.baking.as_ref().ok();
        let planned = baking.and_then(|baking| baking.planned.as_ref().ok());
        let phases = planned.map(|planned| planned.phases.as_slice());
        let phases = phases.unwrap_or_default();
        let core = baking.map(|baking| baking.core);
        let minutes = self.timed.lasts;
        let work = self.at.work;
        if work == StepKind::Preheat {
            let phase = phases.first().copied();
            Some(BenchStep::Preheat { phase, minutes })
        } else if matches!(work, StepKind::Bake | StepKind::LaterBake) {
            let number = if work == StepKind::Bake {
                usize::from(self.at.of)
            } else {
                0
            };
            let is_last = work == StepKind::LaterBake || number.saturating_add(1) >= phases.len();
            Some(BenchStep::Bake {
                phase: phases.get(number).copied(),
                minutes,
                core: core.filter(|_| is_last),
            })
        } else if work == StepKind::Cool {
            // The bread may lie ready before the plan ends.
            let ends = self.ends();
            let ready = self.results.ready_to_cut();
            let cut = if ready > self.timed.begins && ready < ends {
                ready
            } else {
                ends
            };
            Some(BenchStep::Cool { core, cut })
        } else {
            None
        }
    }

    fn ends(&self) -> Instant {
        self.timed.begins.later(self.timed.lasts)
    }

    /// When the step begins that waits for this one; when this one ends where none does.
    fn comes_out(&self) -> Instant {
        let place = self.results.plan.place(self.at);
        let waits = |step: &&Step| place.is_some_and(|place| step.after.contains(&place));
        let next = self.results.plan.steps().iter().find(waits);
        // At the bench the same time as while there is nothing to do.
        let begins = next.and_then(|next| match self.input.bench {
            Some(bench) => {
                let results = self.results;
                Course { results, bench }.can_begin(next.at)
            }
            None => Some(self.results.find(next.at)?.1.begins),
        });
        begins.unwrap_or_else(|| self.ends())
    }

    /// The batch as the scales show it; the formula where it cannot be worked out.
    fn weighed_in(&self) -> Option<&Formula> {
        let rounded = self.input.rounded.map(|rounded| &rounded.formula);
        rounded.or(Some(&self.input.sheet.formula))
    }
}
