//! Plots of the report, as SVG that stands in the page itself.

use plotters::coord::Shift;
use plotters::prelude::*;
use plotters::style::text_anchor::{HPos, Pos, VPos};

const INK: RGBColor = RGBColor(40, 44, 48);
const BAR: RGBColor = RGBColor(176, 92, 46);
const PALE: RGBColor = RGBColor(222, 214, 204);
const DARK: RGBColor = RGBColor(52, 101, 109);

type Area<'a> = DrawingArea<SVGBackend<'a>, Shift>;
type Drawn = Result<(), Box<dyn std::error::Error>>;

fn text(area: &Area<'_>, text: &str, at: (i32, i32), pos: HPos) -> Drawn {
    let style = ("sans-serif", 14).into_font().color(&INK).pos(Pos::new(pos, VPos::Center));
    area.draw(&Text::new(text.to_owned(), at, style))?;
    Ok(())
}

fn rectangle(area: &Area<'_>, from: (i32, i32), to: (i32, i32), colour: RGBColor) -> Drawn {
    area.draw(&Rectangle::new([from, to], colour.filled()))?;
    Ok(())
}

/// A drawing of a size; nothing where it can't be drawn.
fn drawn(size: (u32, u32), draw: impl FnOnce(&Area<'_>) -> Drawn) -> String {
    let mut out = String::new();
    {
        let area = SVGBackend::with_string(&mut out, size).into_drawing_area();
        if draw(&area).and_then(|()| Ok(area.present()?)).is_err() {
            return String::new();
        }
    }
    out
}

fn pixels(number: f64) -> i32 {
    // Sizes of a drawing, far from the limits of the type.
    number.round() as i32
}

/// Shares between 0 and 1, one bar a name.
pub fn shares(rows: &[(String, f64)]) -> String {
    // Narrow enough to be read on a phone, where the page shrinks it.
    const WIDE: i32 = 460;
    const LEFT: i32 = 120;
    const ROW: i32 = 24;
    let high = ROW * i32::try_from(rows.len()).unwrap_or(0) + 8;
    drawn((WIDE.unsigned_abs(), high.unsigned_abs()), |area| {
        for (n, (name, share)) in rows.iter().enumerate() {
            let y = ROW * i32::try_from(n)? + 4;
            let room = WIDE - LEFT - 50;
            let end = LEFT + pixels(f64::from(room) * share);
            text(area, name, (LEFT - 10, y + ROW / 2), HPos::Right)?;
            rectangle(area, (LEFT, y + 4), (LEFT + room, y + ROW - 4), PALE)?;
            rectangle(area, (LEFT, y + 4), (end, y + ROW - 4), BAR)?;
            let percent = format!("{:.0}%", share * 100.0);
            text(area, &percent, (LEFT + room + 8, y + ROW / 2), HPos::Left)?;
        }
        Ok(())
    })
}

/// Counts by month: all birds, and those described well enough.
pub fn months(rows: &[(String, u64, u64)]) -> String {
    const HIGH: i32 = 220;
    const STEP: i32 = 37;
    const BASE: i32 = HIGH - 30;
    const LEFT: i32 = 10;
    let most = rows.iter().map(|r| r.1).max().unwrap_or(0).max(1);
    let wide = LEFT * 2 + STEP * i32::try_from(rows.len()).unwrap_or(0);
    drawn((wide.unsigned_abs(), HIGH.unsigned_abs()), |area| {
        for (n, (name, birds, enough)) in rows.iter().enumerate() {
            let x = LEFT + STEP * i32::try_from(n)?;
            let y = |count: u64| BASE - pixels(f64::from(BASE - 24) * count as f64 / most as f64);
            rectangle(area, (x + 4, y(*birds)), (x + STEP - 4, BASE), PALE)?;
            rectangle(area, (x + 4, y(*enough)), (x + STEP - 4, BASE), DARK)?;
            text(area, &birds.to_string(), (x + STEP / 2, y(*birds) - 10), HPos::Center)?;
            text(area, name, (x + STEP / 2, BASE + 14), HPos::Center)?;
        }
        Ok(())
    })
}
