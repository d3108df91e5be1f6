/** How long work really took, beside how long it is planned to take. */
package crumbclock.domain.pace;
