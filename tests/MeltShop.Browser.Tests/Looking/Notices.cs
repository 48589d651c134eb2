using Microsoft.Playwright;

namespace MeltShop.Browser.Tests.Looking;

/// <summary>The notices of a lost connection and of a program that failed, which no page shows while all is well: shown for a moment.</summary>
internal static class Notices
{
    /// <summary>
    /// Words on them with a contrast under 4.5 to the ground behind them (WCAG 2.2, success criterion 1.4.3, W3C, 2023), and grounds that differ: the library
    /// has looks of its own for both.
    /// </summary>
    public static Task<string[]> NoticeFaultsAsync(this IPage page) => page.EvaluateAsync<string[]>(
        """
        () => {
          const figures = (colour) => colour.match(/[\d.]+/g).map(Number);
          const ground = (e) => { for (; e; e = e.parentElement) { const [r, g, b, a = 1] = figures(getComputedStyle(e).backgroundColor); if (a === 1) return [r, g, b]; } };
          const luminance = ([r, g, b]) => [r, g, b].map(c => c / 255).map(c => c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)
            .reduce((sum, c, n) => sum + c * [0.2126, 0.7152, 0.0722][n], 0);
          const contrast = (e) => { const [light, dark] = [figures(getComputedStyle(e).color), ground(e)].map(luminance).sort((a, b) => b - a); return (light + 0.05) / (dark + 0.05); };

          const lost = document.getElementById('components-reconnect-modal'), failed = document.getElementById('blazor-error-ui');
          lost.classList.add('components-reconnect-failed');
          failed.style.display = 'block';
          const words = [lost, failed].flatMap(notice => [...notice.children].filter(e => e.checkVisibility()).map(e => ({ notice, e })));
          const faults = words.filter(({ e }) => !(contrast(e) >= 4.5)).map(({ notice, e }) => `${notice.id} <${e.tagName.toLowerCase()}> has a contrast of ${contrast(e).toFixed(1)}`);
          if (words.length !== 4) faults.push(`${words.length} parts of notices instead of 4`);
          if (String(ground(lost)) !== String(ground(failed))) faults.push(`grounds ${ground(lost)} and ${ground(failed)}`);
          lost.classList.remove('components-reconnect-failed');
          failed.style.display = '';
          return faults;
        }
        """);
}
