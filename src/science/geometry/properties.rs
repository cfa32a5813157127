//! Properties that hold for every shape: the inverse is an inverse, the free surface is the slope
//! of the volume, nothing falls with depth, nothing unusable gets in.

use super::*;
use crate::science::units::{area::square_meter, length::meter, volume::cubic_meter};

/// The promise of `depth_at`.
const INVERSE: f64 = 1e-12;

/// A central difference over 1e-5 of the height is exact to about the square of that, but loses
/// ten digits of sixteen to cancellation.
const SLOPE: f64 = 1e-6;

fn m(value: f64) -> Length {
    Length::new::<meter>(value)
}

fn m3(value: f64) -> Volume {
    Volume::new::<cubic_meter>(value)
}

fn shapes() -> Vec<(&'static str, Vessel)> {
    let measured = [(0.002, 0.03), (0.006, 0.07), (0.013, 0.13), (0.02, 0.2)];
    let shapes = [
        ("cylinder", Vessel::cylinder(m(0.3), m(0.4))),
        ("bucket", Vessel::tapered_round(m(0.24), m(0.3), m(0.36))),
        ("upturned", Vessel::tapered_round(m(0.3), m(0.02), m(0.36))),
        ("box", Vessel::rectangular(m(1.2), m(0.6), m(0.25))),
        (
            "tote",
            Vessel::tapered_rectangular(m(0.5), m(0.4), m(0.6), m(0.38), m(0.3)),
        ),
        (
            "jug",
            Vessel::bottle(m(0.16), m(0.15), m(0.06), m(0.04), m(0.03)),
        ),
        (
            "no neck",
            Vessel::bottle(m(0.16), m(0.15), m(0.06), m(0.04), m(0.0)),
        ),
        (
            "step",
            Vessel::bottle(m(0.16), m(0.15), m(0.0), m(0.04), m(0.03)),
        ),
        (
            "measured",
            Vessel::measured(&measured.map(|(v, d)| (m3(v), m(d)))),
        ),
    ];
    shapes
        .map(|(name, vessel)| (name, vessel.expect(name)))
        .into()
}

/// Every vessel bare, with capped and with open pipes, and with pipes taller than the rim.
fn basins() -> Vec<(String, Basin)> {
    let capped = HorizontalPipes::new(m(0.05), None, m(0.1), 1).expect("pipes");
    let open = HorizontalPipes::new(m(0.06), Some(m(0.004)), m(0.1), 1).expect("pipes");
    let tall = HorizontalPipes::new(m(0.9), Some(m(0.001)), m(0.01), 1).expect("pipes");
    let mut basins = Vec::new();
    for (name, vessel) in shapes() {
        for (kind, pipes) in [
            ("bare", None),
            ("capped", Some(capped)),
            ("open", Some(open)),
        ] {
            let basin = Basin::new(vessel.clone(), pipes).expect(name);
            basins.push((format!("{name}, {kind}"), basin));
        }
    }
    let wide = Vessel::rectangular(m(1.2), m(0.6), m(0.25)).expect("box");
    basins.push(("tall".into(), Basin::new(wide, Some(tall)).expect("tall")));
    basins
}

/// From the floor to the rim, with both ends and a film at the floor.
fn grid(top: Length) -> Vec<Length> {
    let mut depths: Vec<Length> = (0..400)
        .map(|step| top * (f64::from(step) / 400.0))
        .collect();
    depths.extend([top, top * 1e-9, top * 1e-5, top * (1.0 - 1e-9)]);
    depths
}

#[test]
fn depth_of_the_volume_of_a_depth_is_that_depth() {
    for (name, basin) in basins() {
        let top = basin.depth_max();
        for depth in grid(top) {
            let volume = basin.volume_at(depth).expect(&name);
            let guesses = [
                depth,
                top * 0.3,
                m(f64::NAN),
                m(-1.0),
                top * 2.0,
                depth * 1.01,
            ];
            let direct = basin.depth_at(volume).expect(&name);
            let near = guesses.map(|guess| basin.depth_near(volume, guess).expect(&name));
            for found in near.into_iter().chain([direct]) {
                // What the volume itself cannot tell: its last bit over the free surface.
                let area = basin.area_at(depth).expect(&name);
                let resolved = basin.vessel().capacity() * f64::EPSILON / area;
                let allowed = (depth * INVERSE).max(resolved);
                assert!(
                    (found - depth).abs() <= allowed,
                    "{name}: {depth:?} {found:?}"
                );
            }
        }
        assert_eq!(basin.depth_at(basin.capacity()), Ok(top), "{name}");
        assert_eq!(basin.depth_at(m3(0.0)), Ok(m(0.0)), "{name}");
    }
}

#[test]
fn a_vessel_alone_inverts_to_the_promise_everywhere() {
    for (name, vessel) in shapes() {
        for depth in grid(vessel.depth_max()) {
            let volume = vessel.volume_at(depth).expect(name);
            let allowed = depth * INVERSE;
            let direct = vessel.depth_at(volume).expect(name);
            let near = vessel.depth_near(volume, depth * 1.001).expect(name);
            assert!(
                (direct - depth).abs() <= allowed,
                "{name}: {depth:?} {direct:?}"
            );
            assert!(
                (near - depth).abs() <= allowed,
                "{name}: {depth:?} {near:?}"
            );
        }
    }
}

#[test]
fn the_free_surface_is_the_slope_of_the_volume() {
    for (name, basin) in basins() {
        let top = basin.depth_max();
        let half_step = top * 1e-5;
        // Where the outline bends, or a pipe begins or ends, there is no two-sided slope.
        let mut bends: Vec<Length> = basin.vessel().bends().collect();
        if let Some(pipes) = basin.pipes() {
            let wall = (pipes.height() - pipes.bore()) / 2.0;
            bends.extend([pipes.height(), wall, pipes.height() - wall]);
        }
        for depth in grid(top) {
            if bends
                .iter()
                .any(|bend| (*bend - depth).abs() < half_step * 200.0)
            {
                continue;
            }
            let above = basin.volume_at(depth + half_step).expect(&name);
            let below = basin.volume_at(depth - half_step).expect(&name);
            let slope = (above - below) / (half_step * 2.0);
            let area = basin.area_at(depth).expect(&name);
            let scale = basin.vessel().area_at(depth).expect(&name);
            assert!(
                (slope - area).abs() <= scale * SLOPE,
                "{name}: {depth:?} {slope:?} {area:?}"
            );
        }
    }
}

#[test]
fn a_width_belongs_to_its_area() {
    for (name, vessel) in shapes() {
        for depth in grid(vessel.depth_max()) {
            let half = vessel.width_at(depth).expect(name).get::<meter>();
            let area = vessel.area_at(depth).expect(name).get::<square_meter>();
            let along = depth.get::<meter>();
            let expected = match name {
                "box" => 2.0 * half * 0.6,
                "tote" => 2.0 * half * (0.4 - 0.02 * along / 0.3),
                _ => std::f64::consts::PI * half * half,
            };
            assert!(
                (area - expected).abs() <= area * INVERSE,
                "{name}: {depth:?}"
            );
        }
    }
}

/// A sequence that looks random and is the same in every run (Knuth's multiplier for 64 bits).
struct Sequence(u64);

impl Sequence {
    fn next(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        f64::from(u32::try_from(self.0 >> 32).expect("32 bits")) / f64::from(u32::MAX)
    }
}

#[test]
fn measured_volume_never_falls_with_depth() {
    let mut sequence = Sequence(20);
    for case in 0..200 {
        let mut points = Vec::new();
        let (mut volume, mut depth) = (0.0, 0.0);
        for _ in 0..3 + case % 9 {
            // Steps that differ a thousandfold put the interpolation to the test.
            let (a, b) = (sequence.next(), sequence.next());
            volume += 1e-5 + 1e-2 * a * a * a;
            depth += 1e-4 + 1e-1 * b * b * b;
            points.push((m3(volume), m(depth)));
        }
        let vessel = Vessel::measured(&points).expect("increasing");
        for &(volume, depth) in &points {
            assert_eq!(vessel.volume_at(depth), Ok(volume), "case {case}");
            let found = vessel.depth_at(volume).expect("within");
            assert!((found - depth).abs() <= depth * INVERSE, "case {case}");
        }
        let mut last = m3(0.0);
        for step in 1..=2000 {
            let depth = vessel.depth_max() * (f64::from(step) / 2000.0);
            let now = vessel.volume_at(depth).expect("within");
            // The cubic is evaluated in double precision, the last bit may go either way.
            assert!(
                now >= last * (1.0 - f64::EPSILON),
                "case {case} step {step}"
            );
            last = now;
        }
    }
}

#[test]
fn measured_takes_the_empty_vessel_as_said() {
    let points = [(0.002, 0.03), (0.006, 0.07), (0.013, 0.13)].map(|(v, d)| (m3(v), m(d)));
    let with_zero: Vec<_> = std::iter::once((m3(0.0), m(0.0))).chain(points).collect();
    assert_eq!(Vessel::measured(&points), Vessel::measured(&with_zero));
}

#[test]
fn refuses_unusable_dimensions() {
    use Dimension::{Height, NeckDiameter, ShoulderHeight, TopWidth};
    assert_eq!(
        Vessel::cylinder(m(0.3), m(0.0)),
        Err(GeometryProblem::NotPositive {
            dimension: Height,
            got: m(0.0)
        })
    );
    assert_eq!(
        Vessel::cylinder(m(0.3), m(f64::INFINITY)),
        Err(GeometryProblem::NotFinite { dimension: Height })
    );
    assert_eq!(
        Vessel::tapered_rectangular(m(1.0), m(1.0), m(1.0), m(-1.0), m(1.0)),
        Err(GeometryProblem::NotPositive {
            dimension: TopWidth,
            got: m(-1.0)
        })
    );
    assert_eq!(
        Vessel::bottle(m(0.1), m(0.1), m(-0.1), m(0.1), m(0.1)),
        Err(GeometryProblem::Negative {
            dimension: ShoulderHeight,
            got: m(-0.1)
        })
    );
    assert_eq!(
        Vessel::bottle(m(0.1), m(0.1), m(0.1), m(0.2), m(0.1)),
        Err(GeometryProblem::TooLarge {
            dimension: NeckDiameter,
            got: m(0.2),
            most: m(0.1)
        })
    );
    for size in [1e-200, 1e200] {
        assert_eq!(
            Vessel::cylinder(m(size), m(1.0)),
            Err(GeometryProblem::Unrepresentable)
        );
    }
}

#[test]
fn refuses_unusable_points() {
    let measured = |points: &[(f64, f64)]| {
        let points: Vec<_> = points.iter().map(|&(v, d)| (m3(v), m(d))).collect();
        Vessel::measured(&points).map(|_| ())
    };
    assert_eq!(
        measured(&[(0.0, 0.0), (1.0, 1.0)]),
        Err(GeometryProblem::TooFewPoints { got: 2, least: 3 })
    );
    for (points, index) in [
        ([(0.0, 0.1), (1.0, 1.0), (2.0, 2.0)], 0),
        ([(-1.0, -1.0), (1.0, 1.0), (2.0, 2.0)], 0),
        ([(1.0, 1.0), (1.0, 2.0), (2.0, 3.0)], 1),
        ([(1.0, 1.0), (2.0, 2.0), (3.0, 2.0)], 2),
    ] {
        assert_eq!(
            measured(&points),
            Err(GeometryProblem::NotIncreasing { index })
        );
    }
    assert_eq!(
        measured(&[(1.0, 1.0), (2.0, f64::NAN), (3.0, 3.0)]),
        Err(GeometryProblem::PointNotFinite { index: 1 })
    );
    assert_eq!(
        measured(&[(1.0, 1e-300), (1e300, 2e-300), (1.1e300, 3e-300)]),
        Err(GeometryProblem::Unrepresentable)
    );
}

#[test]
fn refuses_questions_outside_the_vessel() {
    let basin = Basin::new(Vessel::cylinder(m(0.3), m(0.4)).expect("cylinder"), None);
    let basin = basin.expect("bare");
    for depth in [-1e-9, 0.4 + 1e-9, f64::NAN] {
        let outside = |problem| matches!(problem, GeometryProblem::DepthOutside { .. });
        assert!(basin.volume_at(m(depth)).is_err_and(outside));
        assert!(basin.area_at(m(depth)).is_err_and(outside));
        assert!(basin.vessel().width_at(m(depth)).is_err_and(outside));
    }
    for volume in [-1e-9, 1.0, f64::NAN] {
        let outside = |problem| matches!(problem, GeometryProblem::VolumeOutside { .. });
        assert!(basin.depth_at(m3(volume)).is_err_and(outside));
        assert!(basin.depth_near(m3(volume), m(0.1)).is_err_and(outside));
        assert!(basin.vessel().depth_at(m3(volume)).is_err_and(outside));
    }
}
