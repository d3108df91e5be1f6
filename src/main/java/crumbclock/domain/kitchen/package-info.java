/** People, ovens, cold stores, surfaces and equipment, with every calendar already turned into minutes from the problem's start. */
package crumbclock.domain.kitchen;
