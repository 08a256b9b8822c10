//! The exact choice of the planner against a solver of linear programs (`microlp`), another (`HiGHS`, by a file of
//! its answers), every choice there is, and a checker of its own.

use hindsaddle_model::ensemble::SplitMix;
use hindsaddle_model::planner::assignment::{AMOUNTS, Choice, Found, OVER, Problem, SHORT, Search};
use microlp::{ComparisonOp, LinearExpr, OptimizationDirection, Problem as Program, Variable};

/// A problem made from a seed; `highs.py` beside this file makes the same.
fn problem(seed: u64, groups: u64, options: u64) -> Problem {
    let mut dice = SplitMix::new(seed);
    let mut problem = Problem::default();
    for _ in 0..groups {
        let mut group = Vec::new();
        let mass = 100 + dice.below(1900).cast_signed();
        for _ in 0..options {
            let cost = dice.below(1500).cast_signed();
            let (first, second) = (dice.below(5) as usize, dice.below(5) as usize);
            let part = dice.below(101).cast_signed();
            let work = dice.below(20).cast_signed();
            let mut amounts = [0; AMOUNTS];
            amounts[first] += mass * part / 100;
            amounts[second] += mass - mass * part / 100;
            group.push(Choice { cost, amounts, work });
        }
        problem.groups.push(group);
    }
    for target in &mut problem.targets {
        let wanted = dice.below(3);
        let amount = dice.below(groups * 500).cast_signed();
        *target = (wanted > 0).then_some(amount);
    }
    let limited = dice.below(2);
    let most = (groups * 4 + dice.below(groups * 8)).cast_signed();
    problem.most_work = (limited == 1).then_some(most);
    problem
}

fn solved(problem: &Problem) -> Found {
    Search::new(problem.clone()).step(u64::MAX)
}

/// What a choice costs, worked out without the code that is tested.
fn checked(problem: &Problem, chosen: &[usize]) -> i64 {
    assert_eq!(chosen.len(), problem.groups.len());
    let picked: Vec<&Choice> =
        problem.groups.iter().zip(chosen).map(|(group, place)| &group[*place]).collect();
    if let Some(most) = problem.most_work {
        assert!(picked.iter().map(|choice| choice.work).sum::<i64>() <= most, "too much work");
    }
    let mut cost: i64 = picked.iter().map(|choice| choice.cost).sum();
    for amount in 0..AMOUNTS {
        let given: i64 = picked.iter().map(|choice| choice.amounts[amount]).sum();
        if let Some(target) = problem.targets[amount] {
            cost += SHORT * (target - given).max(0) + OVER * (given - target).max(0);
        }
    }
    cost
}

/// The same as a program of zeros and ones, with what is missing and what is too much of each target.
fn by_microlp(problem: &Problem) -> Option<i64> {
    let mut program = Program::new(OptimizationDirection::Minimize);
    let all: Vec<Vec<Variable>> = problem
        .groups
        .iter()
        .map(|group| group.iter().map(|choice| program.add_binary_var(choice.cost as f64)).collect())
        .collect();
    for group in &all {
        program.add_constraint(
            group.iter().map(|one| (*one, 1.0)).collect::<LinearExpr>(),
            ComparisonOp::Eq,
            1.0,
        );
    }
    let sum = |of: &dyn Fn(&Choice) -> i64| -> Vec<(Variable, f64)> {
        let pairs =
            problem.groups.iter().zip(&all).flat_map(|(group, variables)| group.iter().zip(variables));
        pairs.map(|(choice, variable)| (*variable, of(choice) as f64)).collect()
    };
    for amount in 0..AMOUNTS {
        if let Some(target) = problem.targets[amount] {
            let missing = program.add_var(SHORT as f64, (0.0, f64::INFINITY));
            let beyond = program.add_var(OVER as f64, (0.0, f64::INFINITY));
            let mut terms = sum(&|choice| choice.amounts[amount]);
            terms.extend([(missing, 1.0), (beyond, -1.0)]);
            program.add_constraint(
                terms.into_iter().collect::<LinearExpr>(),
                ComparisonOp::Eq,
                target as f64,
            );
        }
    }
    if let Some(most) = problem.most_work {
        let terms = sum(&|choice| choice.work);
        program.add_constraint(terms.into_iter().collect::<LinearExpr>(), ComparisonOp::Le, most as f64);
    }
    let solution = program.solve().ok()?.into_solution().ok()?;
    Some(solution.objective().round() as i64)
}

fn every_choice(problem: &Problem, chosen: &mut Vec<usize>, least: &mut Option<i64>) {
    if chosen.len() == problem.groups.len() {
        if let Some(cost) = problem.cost(chosen)
            && least.is_none_or(|least| cost < least)
        {
            *least = Some(cost);
        }
        return;
    }
    for place in 0..problem.groups[chosen.len()].len() {
        chosen.push(place);
        every_choice(problem, chosen, least);
        chosen.pop();
    }
}

#[test]
fn small_problems_are_solved_as_by_trying_everything() {
    for seed in 0..400 {
        let problem = problem(seed, 2 + seed % 5, 2 + seed % 3);
        let mut least = None;
        every_choice(&problem, &mut Vec::new(), &mut least);
        let found = solved(&problem);
        match least {
            Some(least) => {
                assert_eq!((found.cost, found.bound, found.is_proven), (least, least, true), "seed {seed}");
                assert_eq!(checked(&problem, &found.best.unwrap()), least, "seed {seed}");
            }
            None => assert!(found.best.is_none() && found.is_proven, "seed {seed}"),
        }
    }
}

/// `microlp` 0.7, a general solver.
#[test]
fn a_general_solver_finds_nothing_cheaper_and_nothing_dearer() {
    let mut solvable = 0;
    for seed in 1000..1260 {
        let problem = problem(seed, 4 + seed % 9, 2 + seed % 4);
        let found = solved(&problem);
        assert_eq!(found.best.is_some().then_some(found.cost), by_microlp(&problem), "seed {seed}");
        if let Some(best) = found.best {
            assert_eq!(checked(&problem, &best), found.cost, "seed {seed}");
            solvable += 1;
        }
    }
    assert!(solvable > 200, "{solvable}");
}

/// Optima by `HiGHS` (`scipy.optimize.milp`), written by `highs.py`: seed, groups, options and cost, or nothing if
/// there is no choice.
#[test]
fn highs_has_the_same_optima() {
    let answers = include_str!("highs.txt");
    let mut compared = 0;
    for line in answers.lines() {
        let mut numbers = line.split(' ').map(str::parse::<i64>);
        let mut next = || numbers.next().and_then(Result::ok);
        let (Some(seed), Some(groups), Some(options)) = (next(), next(), next()) else { panic!("{line}") };
        let problem = problem(seed.cast_unsigned(), groups.cast_unsigned(), options.cast_unsigned());
        let found = solved(&problem);
        assert!(found.is_proven);
        assert_eq!(found.best.is_some().then_some(found.cost), next(), "seed {seed}");
        compared += 1;
    }
    assert!(compared >= 500, "{compared}");
}

/// Whenever a search is stopped, the true optimum lies between its bound and what it has.
#[test]
fn a_search_that_is_stopped_says_how_far_from_best_it_may_be() {
    let mut open = 0;
    for seed in 2000..2060 {
        let problem = problem(seed, 12, 5);
        let optimum = solved(&problem);
        let mut search = Search::new(problem);
        for _ in 0..40 {
            let found = search.step(7);
            assert!(found.bound <= optimum.cost && optimum.cost <= found.cost, "seed {seed}: {found:?}");
            open += u32::from(!found.is_proven);
            if found.is_proven {
                assert_eq!(found.cost, optimum.cost);
            }
        }
    }
    assert!(open > 100, "a search that is open now and then: {open}");
}
