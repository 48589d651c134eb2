using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>What a page shows, measured in the browser as a hand and an eye meet it.</summary>
internal static class Measures
{
    /// <summary>
    /// Targets under 48 px, text under 16 px, live values under 24 px, and widths beyond the screen. A link inside a sentence is
    /// text, not a target; a small box counts by the label around it.
    /// </summary>
    public static Task<string[]> FaultsAsync(this IPage page) => page.EvaluateAsync<string[]>(
        """
        () => {
          const seen = e => e.checkVisibility({ visibilityProperty: true, opacityProperty: true }) && e.getClientRects().length > 0 && !e.closest('.unseen, .skip, [aria-hidden=true]');
          const name = e => `${location.pathname} <${e.tagName.toLowerCase()} class="${e.getAttribute('class') ?? ''}"> ${(e.textContent || e.value || '').trim().slice(0, 30)}`;
          const targets = [...document.querySelectorAll('button, select, summary, textarea, input:not([type=hidden]), a[href], [role=button]')]
            .filter(seen)
            .filter(e => !(e.tagName === 'A' && getComputedStyle(e).display === 'inline'))
            .map(e => [e, (e.matches('input[type=checkbox], input[type=radio]') && e.closest('label') || e).getBoundingClientRect()])
            .filter(([, box]) => Math.round(box.height) < 48 || Math.round(box.width) < 48)
            .map(([e, box]) => `target ${Math.round(box.width)}x${Math.round(box.height)}: ${name(e)}`);
          const main = [...document.querySelectorAll('.press-primary')].filter(seen)
            .filter(e => Math.round(e.getBoundingClientRect().height) < 72).map(e => `primary under 72: ${name(e)}`);
          const texts = [];
          const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          for (let node = walk.nextNode(); node; node = walk.nextNode()) {
            const e = node.parentElement;
            if (!node.data.trim() || e.closest('script, style, noscript, option') || !seen(e)) continue;
            const scale = e instanceof SVGElement ? e.getScreenCTM().a : 1;
            const size = Math.round(parseFloat(getComputedStyle(e).fontSize) * scale * 10) / 10;
            if (size < 16) texts.push(`text ${size}: ${name(e)}`);
            if (e.matches('.live, .clock') && size < 24) texts.push(`live ${size}: ${name(e)}`);
            if (e.matches('.live, .number, .clock') && !getComputedStyle(e).fontVariantNumeric.includes('tabular-nums')) texts.push(`figures not tabular: ${name(e)}`);
          }
          const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
          return [...targets, ...main, ...texts, ...(wide > 0 ? [`${location.pathname} is ${wide} px too wide`] : [])];
        }
        """);
}
