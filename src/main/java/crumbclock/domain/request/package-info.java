/** Orders as people ask for them, before a method turns them into steps: read by the formats, expanded by the methods. */
package crumbclock.domain.request;
