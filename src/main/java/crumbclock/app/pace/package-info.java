/**
 * Learns from finished days: which recorded times say how long work takes, and which do not. What is made of them is added up in
 * {@code domain.pace}.
 */
package crumbclock.app.pace;
