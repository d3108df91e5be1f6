/**
 * One page that holds the whole plan: it needs no network and no script, reads on a phone and prints on A4. Texts meet
 * the page only through templates that escape them; drawings come from {@code report.svg}. The only package that uses
 * FreeMarker.
 */
package crumbclock.report.html;
