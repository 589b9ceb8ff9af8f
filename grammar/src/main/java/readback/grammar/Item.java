package readback.grammar;

import readback.calc.quantity.Unit;
import readback.grammar.lexicon.ChoiceSet;
import readback.grammar.lexicon.QuantityWords;

/** What a phrase can mean where it stands. */
sealed interface Item {

    /** Gives the phrase to the reader, as what it is. */
    void read(Reader reader);

    /** Takes phrases, each as what it is. */
    interface Reader {

        void name(Name name);

        void unitName(UnitName unitName);

        void defaultUnit(DefaultUnit defaultUnit);

        void order(Order order);

        void orderAbout(OrderAbout orderAbout);

        void option(Option option);

        void introduction(Introduction introduction);

        void small(Small small);

        void topic(Topic topic);

        void spot(Spot spot);
    }

    /**
     * The name of a quantity.
     *
     * @param weight 0 to 1, how clearly the name means the quantity
     * @param unitOnly whether it does so only with a unit
     */
    record Name(QuantityWords words, double weight, boolean unitOnly) implements Item {
        @Override
        public void read(Reader reader) {
            reader.name(this);
        }
    }

    record UnitName(Unit unit) implements Item {
        @Override
        public void read(Reader reader) {
            reader.unitName(this);
        }
    }

    /** "degrees": the unit of the settings. */
    record DefaultUnit() implements Item {
        @Override
        public void read(Reader reader) {
            reader.defaultUnit(this);
        }
    }

    record Order(Command command) implements Item {
        @Override
        public void read(Reader reader) {
            reader.order(this);
        }
    }

    /** The beginning of a command that names a quantity. */
    record OrderAbout(Command command) implements Item {
        @Override
        public void read(Reader reader) {
            reader.orderAbout(this);
        }
    }

    /**
     * An option of a set of choices.
     *
     * @param alone what becomes of it where its set is not asked
     */
    record Option(String set, String option, ChoiceSet.Anywhere alone) implements Item {

        /** Whether it is understood where its set is not asked. */
        boolean anywhere() {
            return alone != ChoiceSet.Anywhere.NO && !mentioned();
        }

        /** Whether it is only spoken of where its set is not asked. */
        boolean mentioned() {
            return alone == ChoiceSet.Anywhere.MENTIONED;
        }

        Meaning.Choice choice() {
            return new Meaning.Choice(set, option);
        }

        @Override
        public void read(Reader reader) {
            reader.option(this);
        }
    }

    record Introduction(String set) implements Item {
        @Override
        public void read(Reader reader) {
            reader.introduction(this);
        }
    }

    /** What an option is about, where it is asked for. */
    record Topic(String set, String option) implements Item {
        @Override
        public void read(Reader reader) {
            reader.topic(this);
        }
    }

    /**
     * Words that mean an option wherever they stand.
     *
     * @param anywhere whether they do so where its set is not asked
     * @param supposed whether they do so only behind words such as "what do i do if"
     */
    record Spot(String set, String option, boolean anywhere, boolean supposed) implements Item {

        Meaning.Choice choice() {
            return new Meaning.Choice(set, option);
        }

        @Override
        public void read(Reader reader) {
            reader.spot(this);
        }
    }

    record Small(Word word) implements Item {
        @Override
        public void read(Reader reader) {
            reader.small(this);
        }
    }

    /** The kinds of small words. */
    enum Word {
        CORRECTION,
        CHANGE,
        INSTEAD,
        LINK,
        BEHIND,
        FILLER,
        NOTE,
        SATURATION,
        OVER,
        ASK,
        TAIL,
        PROBE,
        MEASURES,
        SUPPOSE,
        DEFINE,
        INQUIRE
    }
}
