package reglet.drafting;

import reglet.model.Place;
import reglet.model.Problem;

/** A problem before its place is known. */
record Wrong(String what, String expected) {
    Problem at(Place place) {
        return new Problem(place, what, expected);
    }
}
