namespace Commission.Measurement.Quantities;

/// <summary>The operators every quantity shares, written once. Operators that change the kind of quantity stand with the quantity on their left.</summary>
public static class QuantityOperators
{
    extension<T>(T)
        where T : struct, IQuantity<T>
    {
        /// <summary>Compares SI values.</summary>
        public static bool operator <(T left, T right) => left.Si < right.Si;

        /// <summary>Compares SI values.</summary>
        public static bool operator >(T left, T right) => left.Si > right.Si;

        /// <summary>Compares SI values.</summary>
        public static bool operator <=(T left, T right) => left.Si <= right.Si;

        /// <summary>Compares SI values.</summary>
        public static bool operator >=(T left, T right) => left.Si >= right.Si;
    }

    extension<T>(T)
        where T : struct, ILinearQuantity<T>
    {
        /// <summary>Sum of two of a kind.</summary>
        public static T operator +(T left, T right) => T.FromSi(left.Si + right.Si);

        /// <summary>Difference of two of a kind.</summary>
        public static T operator -(T left, T right) => T.FromSi(left.Si - right.Si);

        /// <summary>The opposite.</summary>
        public static T operator -(T value) => T.FromSi(-value.Si);

        /// <summary>A multiple.</summary>
        public static T operator *(T left, double right) => T.FromSi(left.Si * right);

        /// <summary>A multiple.</summary>
        public static T operator *(double left, T right) => T.FromSi(left * right.Si);

        /// <summary>A part.</summary>
        public static T operator /(T left, double right) => T.FromSi(left.Si / right);

        /// <summary>How many times one goes into the other.</summary>
        public static double operator /(T left, T right) => left.Si / right.Si;
    }
}
