using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>What a page shows, measured in the browser as a hand and an eye meet it.</summary>
internal static class Measures
{
    /// <summary>
    /// Targets under 48 px and gaps between them under 8 px (24 px around the primary press and around one that stands apart), text under 16 px, live values (class <c>live</c>) under 24 px, values that change and are not marked so, and widths beyond
    /// the screen; in open shadow roots as well, where a clock draws its figures. A link inside a sentence is text, not a target; a small box
    /// counts by the label around it; quiet words beside a live value are words.
    /// </summary>
    public static Task<string[]> FaultsAsync(this IPage page) => page.EvaluateAsync<string[]>(
        """
        () => {
          const elements = (root) => [...root.querySelectorAll('*')].flatMap(e => e.shadowRoot ? [e, ...elements(e.shadowRoot)] : [e]);
          const above = (e) => e.parentElement ?? e.getRootNode().host;
          const within = (e, selector) => { for (; e; e = above(e)) if (e.matches(selector)) return e; return null; };
          const seen = (e) => e.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && e.getClientRects().length > 0
            && !within(e, '.unseen, .skip, [aria-hidden=true]') && getComputedStyle(e).clipPath !== 'inset(50%)';
          const name = (e) => `${location.pathname} <${e.tagName.toLowerCase()} class="${e.getAttribute('class') ?? ''}"> ${(e.textContent || e.value || '').trim().slice(0, 30)}`;
          const shown = elements(document.body).filter(seen);
          const isText = (e) => e.tagName === 'A' && getComputedStyle(e).display === 'inline' && e.parentElement.textContent.trim().length > e.textContent.trim().length;

          const targets = shown.filter(e => e.matches('button, select, summary, textarea, input:not([type=hidden]), a[href], [role=button]') && !isText(e))
            .map(e => ({ e, box: (e.matches('input[type=checkbox], input[type=radio]') && e.closest('label') || e).getBoundingClientRect() }));
          const small = targets.filter(({ box }) => Math.round(box.height) < 48 || Math.round(box.width) < 48)
            .map(({ e, box }) => `target ${Math.round(box.width)}x${Math.round(box.height)}: ${name(e)}`);
          const primary = targets.filter(({ e, box }) => e.matches('.press-primary') && Math.round(box.height) < 72).map(({ e }) => `primary under 72: ${name(e)}`);

          // What a frame cuts off is not there to be touched, and what is laid over the page is apart from it.
          for (const target of targets) {
            let { left, top, right, bottom } = target.box;
            for (let e = above(target.e); e; e = above(e)) {
              const style = getComputedStyle(e);
              if (style.overflowX !== 'visible' && e !== document.documentElement && e !== document.body) {
                const frame = e.getBoundingClientRect();
                [left, top, right, bottom] = [Math.max(left, frame.left), Math.max(top, frame.top), Math.min(right, frame.right), Math.min(bottom, frame.bottom)];
              }
              if (!target.layer && (style.position === 'fixed' || style.position === 'sticky' || (style.position === 'absolute' && style.zIndex !== 'auto'))) target.layer = e;
            }
            Object.assign(target, { left, top, right, bottom });
          }
          const near = targets.filter(t => t.right > t.left && t.bottom > t.top).flatMap((a, n, all) => all.slice(n + 1)
            .filter(b => a.layer === b.layer && !a.e.contains(b.e) && !b.e.contains(a.e))
            .map(b => [b, Math.max(b.left - a.right, a.left - b.right, b.top - a.bottom, a.top - b.bottom)])
            .filter(([b, gap]) => Math.round(gap) < ([a, b].some(t => t.e.matches('.press-apart, .press-primary')) ? 24 : 8))
            .map(([b, gap]) => `gap ${Math.round(gap)}: ${name(a.e)} | ${name(b.e)}`));

          const texts = [];
          for (const e of shown) {
            if (![...e.childNodes].some(node => node.nodeType === Node.TEXT_NODE && node.data.trim()) && !e.matches('input:not([type=hidden], [type=checkbox], [type=radio]), textarea, select')) continue;
            if (within(e, 'script, style, noscript, option')) continue;
            const style = getComputedStyle(e);
            const scale = e instanceof SVGElement ? e.getScreenCTM().a : 1;
            const size = Math.round(parseFloat(style.fontSize) * scale * 10) / 10;
            if (size < 16) texts.push(`text ${size}: ${name(e)}`);
            const live = within(e, '.live, .quiet');
            if (live?.matches('.live') && size < 24) texts.push(`live ${size}: ${name(e)}`);
            if ((live?.matches('.live') || e.matches('.number')) && !style.fontVariantNumeric.includes('tabular-nums')) texts.push(`figures not tabular: ${name(e)}`);
          }
          // What changes while one looks at it, by its place: without the class the size of none of it would be looked at.
          const changing = '[data-testid=left-kg], [data-testid=weighings] td[data-heading], [data-testid=card-stop], [data-testid=tapped-kg], [data-testid=poured-in-kg], [data-testid=in-furnace], [data-testid=metal-now], [data-testid=stop-weight], [data-testid=stop-at] .stop-time, ladle-clock, .loading-left, .loading-kg, .limit-value';
          texts.push(...shown.filter(e => e.matches(changing) && !e.matches('.live, .quiet')).map(e => `not live: ${name(e)}`));
          // A press has the address of its form: of two with the same, one would open the other's.
          const presses = shown.filter(e => e.matches('main [data-opens]')).map(e => [e.dataset.opens, e.dataset.of].filter(Boolean).join('.'));
          const twice = presses.filter((form, n) => presses.indexOf(form) !== n).map(form => `${location.pathname} has two presses for ${form}`);
          const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
          return [...small, ...primary, ...near, ...texts, ...twice, ...(wide > 0 ? [`${location.pathname} is ${wide} px too wide`] : [])];
        }
        """);
}
